package org.fandown.evidence;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.units.Quantity;
import org.fandown.vehicle.WheelId;

/**
 * What was measured and seen at one wheel.
 *
 * @param wheel the wheel
 * @param values measured lengths and angles
 * @param answers yes-or-no observations
 * @param makersLimit stroke limit the maker states for this chamber, empty if not noted
 * @param defects defects of this brake in the person's words, empty if none
 * @param at what held
 */
public record WheelReading(
        WheelId wheel,
        Map<Check, Measured> values,
        Map<Check, Boolean> answers,
        Optional<Quantity> makersLimit,
        List<String> defects,
        Circumstances at) {

    /**
     * A length or angle at a wheel.
     *
     * @param value the value
     * @param readings how many instrument readings went into it: one, or two where a stroke was
     *     found by subtraction
     * @param own what held while this was measured, empty if what held for the wheel: one stroke is
     *     measured with the pedal up, another with the pedal down
     */
    public record Measured(Quantity value, int readings, Optional<Circumstances> own) {
        /** What held for the wheel held for it. */
        public Measured(Quantity value, int readings) {
            this(value, readings, Optional.empty());
        }

        private Measured during(Circumstances at) {
            return own.isPresent() ? this : new Measured(value, readings, Optional.of(at));
        }
    }

    /** What held while something was measured here. */
    public Circumstances at(Measured measured) {
        return measured.own().orElse(at);
    }

    /** Copies the collections. */
    public WheelReading {
        values = copy(values);
        answers = copy(answers);
        defects = List.copyOf(defects);
    }

    /**
     * Returns this and a later one of the same wheel; where both speak, the later one counts. What
     * was measured keeps what held for it then.
     */
    WheelReading then(WheelReading later) {
        Map<Check, Measured> allValues = new EnumMap<>(Check.class);
        values.forEach((check, measured) -> allValues.put(check, measured.during(at)));
        later.values.forEach((check, measured) -> allValues.put(check, measured.during(later.at)));
        Map<Check, Boolean> allAnswers = new EnumMap<>(Check.class);
        allAnswers.putAll(answers);
        allAnswers.putAll(later.answers);
        List<String> allDefects = new ArrayList<>(defects);
        allDefects.addAll(later.defects);
        return new WheelReading(
                wheel,
                allValues,
                allAnswers,
                later.makersLimit.or(() -> makersLimit),
                allDefects,
                later.at.orElse(at));
    }

    private static <V> Map<Check, V> copy(Map<Check, V> map) {
        Map<Check, V> copy = new EnumMap<>(Check.class);
        copy.putAll(map);
        return java.util.Collections.unmodifiableMap(copy);
    }

    /** The measured value, empty if it was not measured. */
    public Optional<Measured> value(Check check) {
        return Optional.ofNullable(values.get(check));
    }

    /** The answer, empty if none was noted. */
    public Optional<Boolean> answer(Check check) {
        return Optional.ofNullable(answers.get(check));
    }
}
