package org.fandown.procedure;

/** Pressures to which a plan builds up. */
final class Levels {
    private static final int GRID = 5;

    private Levels() {}

    /** The level that meets a need from below: the next multiple of 5 psi, or its least. */
    static int up(Need need) {
        int level = (need.least() + GRID - 1) / GRID * GRID;
        return level <= need.most() ? level : need.least();
    }
}
