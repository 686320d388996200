package org.fandown.referee;

import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.evidence.Observations;

/**
 * One check as it was made: from when it was begun, or else the statement before, to when it was
 * written down.
 *
 * @param check the check
 * @param window from begin to record
 * @param begun whether the person said that it begins
 * @param recorded all that was written down in that moment
 */
record Attempt(Check check, Stretch window, boolean begun, Observations recorded) {
    double seconds() {
        return Tale.seconds(window.to());
    }

    Optional<org.fandown.evidence.Reading> reading() {
        return recorded.reading(check);
    }
}
