package org.fandown.vehicle;

/** A side of the vehicle, as seen by a driver who looks forward. */
public enum Side {
    /** The left side. */
    LEFT('L'),
    /** The right side. */
    RIGHT('R');

    private final char letter;

    Side(char letter) {
        this.letter = letter;
    }

    /** Returns {@code L} or {@code R}. */
    public char letter() {
        return letter;
    }

    /** Returns the other side. */
    public Side opposite() {
        return this == LEFT ? RIGHT : LEFT;
    }
}
