package org.fandown.document;

import java.util.LinkedHashMap;
import java.util.Map;

/** The one way in which constants are named in documents: lower case with hyphens. */
public final class Names {
    private Names() {}

    /**
     * Returns the name of a constant as documents write it.
     *
     * @param constant for example {@code NOT_MET}
     * @return for example {@code not-met}
     */
    public static String kebab(Enum<?> constant) {
        StringBuilder name = new StringBuilder(constant.name());
        for (int i = 0; i < name.length(); i++) {
            name.setCharAt(i, kebab(name.charAt(i)));
        }
        return name.toString();
    }

    /** Says whether a text is the name of a constant, without making that name. */
    static boolean isKebab(Enum<?> constant, String text) {
        String name = constant.name();
        if (name.length() != text.length()) {
            return false;
        }
        for (int i = 0; i < name.length(); i++) {
            if (kebab(name.charAt(i)) != text.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    private static char kebab(char c) {
        return c == '_' ? '-' : c >= 'A' && c <= 'Z' ? (char) (c + ('a' - 'A')) : c;
    }

    /**
     * Returns constants by their names in documents, in the order given.
     *
     * @param constants the constants, as a rule {@code values()} of their type
     * @param <E> their type
     * @return the constants by name
     */
    public static <E extends Enum<E>> Map<String, E> byKebab(E[] constants) {
        Map<String, E> names = new LinkedHashMap<>();
        for (E constant : constants) {
            names.put(kebab(constant), constant);
        }
        return names;
    }
}
