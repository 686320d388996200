package org.fandown.rulebook;

/**
 * Where a rule can be read.
 *
 * @param work the law, standard or handbook
 * @param edition its edition, amendment or the date it was read
 * @param section the place inside it
 */
public record Source(String work, String edition, String section) {
    @Override
    public String toString() {
        return work + ", " + edition + ", " + section;
    }
}
