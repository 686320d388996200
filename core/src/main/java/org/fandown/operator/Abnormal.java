package org.fandown.operator;

import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.Component;

/**
 * Something the operator noticed that a sound vehicle does not show, whether or not the place has a
 * rule about it.
 *
 * @param check the check that showed it, empty if a part did
 * @param part the part that showed it, empty if a check did
 * @param words what was noticed
 */
public record Abnormal(Optional<Check> check, Optional<Component> part, String words) {
    static Abnormal by(Check check, String words) {
        return new Abnormal(Optional.of(check), Optional.empty(), words);
    }

    static Abnormal on(Component part, String words) {
        return new Abnormal(Optional.empty(), Optional.of(part), words);
    }

    /** Returns it with what showed it: {@code governor-cut-out: no purge is heard}. */
    @Override
    public String toString() {
        return check.map(Check::id).or(() -> part.map(Component::id)).orElse("") + ": " + words;
    }
}
