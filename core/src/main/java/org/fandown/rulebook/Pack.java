package org.fandown.rulebook;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fandown.check.PlaceCode;

/**
 * The rules of one place.
 *
 * @param place the place
 * @param name its name in English
 * @param parent the place whose rules hold too, empty if none
 * @param about what is well covered and what is not
 * @param checkedOn when a person last compared the pack with its sources
 * @param gaps expected checks it has no rule for
 * @param rules its rules
 */
public record Pack(
        PlaceCode place,
        String name,
        Optional<PlaceCode> parent,
        String about,
        LocalDate checkedOn,
        List<Gap> gaps,
        List<Rule> rules) {
    /** Copies the lists. */
    public Pack {
        gaps = List.copyOf(gaps);
        rules = List.copyOf(rules);
    }
}
