package org.fandown.units;

/** Turns typographic signs that phones and word processors insert into the plain ones. */
final class QuantityScript {
    private static final String VULGAR = "\u00bd\u00bc\u00be\u215b\u215c\u215d\u215e";
    private static final String[] FRACTIONS = {"1/2", "1/4", "3/4", "1/8", "3/8", "5/8", "7/8"};

    private QuantityScript() {}

    static String plain(String written) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < written.length(); i++) {
            char c = written.charAt(i);
            int fraction = VULGAR.indexOf(c);
            if (fraction >= 0) {
                if (!text.isEmpty() && Decimals.isDigit(text.charAt(text.length() - 1))) {
                    text.append(' ');
                }
                text.append(FRACTIONS[fraction]);
            } else {
                text.append(plain(c));
            }
        }
        return text.toString();
    }

    private static char plain(char c) {
        return switch (c) {
            case '\u00a0', '\u2009', '\u202f' -> ' ';
            case '\u2212', '\u2010', '\u2011' -> '-';
            case '\u2033', '\u201d' -> '"';
            case '\u2044' -> '/';
            default -> c;
        };
    }
}
