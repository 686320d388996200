package org.fandown.app.cli;

/** Times on the clock in words. */
final class Clock {
    private static final int TENTHS_A_MINUTE = 600;

    private Clock() {}

    /** Minutes and seconds: {@code 12:05}. */
    static String of(int tenths) {
        int seconds = (tenths % TENTHS_A_MINUTE + 5) / 10;
        int minutes = tenths / TENTHS_A_MINUTE + seconds / 60;
        int rest = seconds % 60;
        return minutes + ":" + (rest < 10 ? "0" : "") + rest;
    }

    /** How often: {@code once}, {@code twice}, {@code 3 times}. */
    static String times(int count) {
        return count == 1 ? "once" : count == 2 ? "twice" : count + " times";
    }
}
