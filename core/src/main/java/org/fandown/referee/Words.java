package org.fandown.referee;

import org.fandown.units.Decimals;

/** Numbers and moments as feedback says them. */
final class Words {
    private static final int MINUTE = 60;

    private Words() {}

    /** A moment of the run, {@code 3:07}. */
    static String clock(double seconds) {
        long whole = (long) Math.floor(seconds + 1e-6);
        long rest = whole % MINUTE;
        return whole / MINUTE + (rest < 10 ? ":0" : ":") + rest;
    }

    static String number(double value) {
        return Decimals.formatShort(value, 2);
    }

    static String psi(double psi) {
        return Decimals.format(psi, 0) + " psi";
    }

    static String seconds(double seconds) {
        return Decimals.format(seconds, 0) + " s";
    }

    /** A clause as a sentence. */
    static String sentence(String clause) {
        char first = clause.charAt(0);
        boolean small = first >= 'a' && first <= 'z';
        String head = small ? String.valueOf((char) (first - 'a' + 'A')) : clause.substring(0, 1);
        boolean ends = clause.endsWith(".");
        return head + clause.substring(1) + (ends ? "" : ".");
    }

    /** The title of a check within a sentence; abbreviations keep their capitals. */
    static String inside(String title) {
        boolean word = title.length() > 1 && title.charAt(1) >= 'a' && title.charAt(1) <= 'z';
        char first = title.charAt(0);
        return word && first >= 'A' && first <= 'Z'
                ? (char) (first - 'A' + 'a') + title.substring(1)
                : title;
    }
}
