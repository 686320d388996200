package org.fandown.procedure;

/**
 * What a check does to the pressure, beside what a running compressor does meanwhile.
 *
 * @param kind in which way
 * @param psi the pressure at its end, psi; 0 where that follows from the start
 */
public record Change(Kind kind, int psi) {
    /** In which way. */
    public enum Kind {
        /** It takes no air. */
        NONE,
        /** The compressor builds up to the pressure. */
        RISE,
        /** The pedal is pumped until the pressure is down to it. */
        FALL,
        /** One full application takes its share. */
        APPLICATION,
        /** Air escapes through an open line until the valve shuts. */
        ESCAPE,
        /** A little is blown off. */
        BLOW
    }

    /** It takes no air. */
    public static final Change NONE = new Change(Kind.NONE, 0);
}
