package org.fandown.app.paper;

import java.text.Bidi;

/**
 * Turns text that is written from right to left into the order in which it is seen, because the
 * page is set from left to right. Letters of Arabic stay in their separate forms.
 */
final class Writing {
    private static final String PAIRS = "()[]{}<>";

    private Writing() {}

    /** The text in the order in which it is seen; text from left to right stays as it is. */
    static String asSeen(String text) {
        char[] letters = text.toCharArray();
        if (!Bidi.requiresBidi(letters, 0, letters.length)) {
            return text;
        }
        Bidi bidi = new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
        int runs = bidi.getRunCount();
        byte[] levels = new byte[runs];
        Integer[] order = new Integer[runs];
        for (int i = 0; i < runs; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            order[i] = i;
        }
        Bidi.reorderVisually(levels, 0, order, 0, runs);
        StringBuilder seen = new StringBuilder(text.length());
        for (int run : order) {
            String part = text.substring(bidi.getRunStart(run), bidi.getRunLimit(run));
            boolean leftward = bidi.getRunLevel(run) % 2 == 1;
            seen.append(leftward ? turned(part) : part);
        }
        return seen.toString();
    }

    private static String turned(String part) {
        StringBuilder turned = new StringBuilder(part).reverse();
        for (int i = 0; i < turned.length(); i++) {
            int pair = PAIRS.indexOf(turned.charAt(i));
            if (pair >= 0) {
                turned.setCharAt(i, PAIRS.charAt(pair ^ 1));
            }
        }
        return turned.toString();
    }
}
