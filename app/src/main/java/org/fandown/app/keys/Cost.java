package org.fandown.app.keys;

/**
 * How much work it is to make one hash of a password.
 *
 * @param memory kibibytes, at least 8 for each lane
 * @param passes over the memory, at least 1
 * @param lanes parts of the memory that could be filled side by side, at least 1
 */
public record Cost(int memory, int passes, int lanes) {
    /** RFC 9106, section 4, second recommended option: where memory is not plenty. */
    public static final Cost USUAL = new Cost(64 * 1024, 3, 4);
}
