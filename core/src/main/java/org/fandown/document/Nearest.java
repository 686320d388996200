package org.fandown.document;

import java.util.Collection;
import java.util.List;

/** Finds the name that was probably meant. */
public final class Nearest {
    private static final int MAX_DISTANCE = 2;

    private Nearest() {}

    /**
     * Words a next step for a name that is not known.
     *
     * @param written the name as written
     * @param names the names that are known
     * @param otherwise the step if no name is near, that is, within two changed letters
     * @return {@code did you mean 'x'?}, or the other step
     */
    public static String advice(String written, Collection<String> names, String otherwise) {
        String best = "";
        int bestDistance = MAX_DISTANCE + 1;
        for (String name : names) {
            boolean comparable = Math.abs(name.length() - written.length()) <= MAX_DISTANCE;
            int distance = comparable ? distance(written, name) : bestDistance;
            if (distance < bestDistance && distance < name.length()) {
                best = name;
                bestDistance = distance;
            }
        }
        return best.isEmpty() ? otherwise : "did you mean '" + best + "'?";
    }

    /** Says whether a word that is not known may be meant for a name. */
    static boolean isNear(String written, String name) {
        return !advice(written, List.of(name), "").isEmpty();
    }

    /** Counts the letters to insert, remove, replace or swap with a neighbour. */
    static int distance(String a, String b) {
        int[] beforeLast = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(last[j - 1] + change, 1 + Math.min(last[j], row[j - 1]));
                boolean swapped =
                        i > 1
                                && j > 1
                                && a.charAt(i - 1) == b.charAt(j - 2)
                                && a.charAt(i - 2) == b.charAt(j - 1);
                if (swapped) {
                    row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
                }
            }
            beforeLast = last;
            last = row;
        }
        return last[b.length()];
    }
}
