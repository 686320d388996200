package org.fandown.document;

/** Builds the paths by which nodes are named, such as {@code axles[2].brake}. */
public final class Paths {
    private Paths() {}

    /**
     * Returns the path of a value in a map. A key that is not made of letters, digits, hyphens and
     * underscores is put in brackets and quotes.
     *
     * @param parent the path of the map
     * @param key the key
     * @return the path of the value
     */
    public static String key(String parent, String key) {
        if (!isPlain(key)) {
            return parent + "[\"" + Texts.shown(key).replace("\"", "\\\"") + "\"]";
        }
        return parent.isEmpty() ? key : parent + "." + key;
    }

    /**
     * Returns the path of an item of a list.
     *
     * @param parent the path of the list
     * @param index the item, counted from 0
     * @return the path of the item
     */
    public static String item(String parent, int index) {
        return parent + "[" + index + "]";
    }

    private static boolean isPlain(String key) {
        for (int i = 0; i < key.length(); i++) {
            char c = key.charAt(i);
            boolean letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
            if (!letter && (c < '0' || c > '9') && c != '-' && c != '_') {
                return false;
            }
        }
        return !key.isEmpty();
    }
}
