package org.fandown.operator;

/**
 * A step, or a part of it, that could not be done.
 *
 * @param step the text form of the step
 * @param why what stood in the way, with how far it went and how long it was tried
 */
public record NotDone(String step, String why) {
    @Override
    public String toString() {
        return step + ": " + why;
    }
}
