package org.fandown.operator;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fandown.check.Check;
import org.fandown.check.Circumstance;
import org.fandown.check.Component;
import org.fandown.evidence.Circumstances;
import org.fandown.evidence.PartReading;
import org.fandown.evidence.Reading;
import org.fandown.evidence.WheelReading;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.vehicle.WheelId;

/**
 * What the operator writes down while the work goes on. Later readings of a check replace earlier
 * ones; measurements of one wheel are put together.
 */
public final class Observed {
    private final Map<Check, Reading> readings = new EnumMap<>(Check.class);
    private final Map<WheelId, WheelReading> wheels = new TreeMap<>();
    private final Map<Component, PartReading> parts = new EnumMap<>(Component.class);
    private final List<Abnormal> abnormal = new ArrayList<>();
    private final List<NotDone> notDone = new ArrayList<>();

    Observed reading(Reading reading) {
        readings.put(reading.check(), reading);
        return this;
    }

    /** Notes what each needle showed. */
    Observed needles(Check check, Needles needles, Circumstances at, String note) {
        return reading(new Reading.Value(check, needles.quantities(), Optional.empty(), at, note));
    }

    /** Notes what one needle showed, psi. */
    Observed needle(Check check, int psi, Circumstances at, String note) {
        return reading(
                new Reading.Value(
                        check, List.of(Quantity.of(psi, Unit.PSI)), Optional.empty(), at, note));
    }

    /** Notes an answer; a no is abnormal as well. */
    Observed answer(Check check, boolean yes, Circumstances at, String otherwise) {
        if (!yes) {
            abnormal(check, otherwise);
        }
        return reading(new Reading.Answer(check, yes, at, yes ? "" : otherwise));
    }

    /** Notes what was measured at a wheel, beside what is noted of it already. */
    Observed wheel(WheelReading reading) {
        WheelReading before = wheels.get(reading.wheel());
        wheels.put(reading.wheel(), before == null ? reading : together(before, reading));
        return this;
    }

    private static WheelReading together(WheelReading before, WheelReading more) {
        Map<Check, WheelReading.Measured> values = new EnumMap<>(Check.class);
        values.putAll(before.values());
        values.putAll(more.values());
        Map<Check, Boolean> answers = new EnumMap<>(Check.class);
        answers.putAll(before.answers());
        answers.putAll(more.answers());
        List<String> defects = new ArrayList<>(before.defects());
        defects.addAll(more.defects());
        return new WheelReading(
                before.wheel(),
                values,
                answers,
                more.makersLimit().or(before::makersLimit),
                defects,
                common(before.at(), more.at()));
    }

    /** A wheel has one set of circumstances: those that held all the time are kept. */
    private static Circumstances common(Circumstances one, Circumstances other) {
        Map<Circumstance, String> states = new EnumMap<>(Circumstance.class);
        one.states()
                .forEach(
                        (what, state) -> {
                            if (other.state(what).map(state::equals).orElse(true)) {
                                states.put(what, state);
                            }
                        });
        Map<Circumstance, Quantity> quantities = new EnumMap<>(Circumstance.class);
        quantities.putAll(other.quantities());
        quantities.putAll(one.quantities());
        return new Circumstances(states, quantities);
    }

    Observed part(PartReading reading) {
        parts.put(reading.part(), reading);
        return this;
    }

    Observed abnormal(Check check, String words) {
        abnormal.add(Abnormal.by(check, words));
        return this;
    }

    Observed abnormal(Component part, String words) {
        abnormal.add(Abnormal.on(part, words));
        return this;
    }

    Observed notDone(Check check, String why) {
        notDone.add(new NotDone(check.id(), why));
        return this;
    }

    Observed notDone(String step, String why) {
        notDone.add(new NotDone(step, why));
        return this;
    }

    /** Adds what another step brought. */
    void add(Observed more) {
        readings.putAll(more.readings);
        more.wheels.values().forEach(this::wheel);
        parts.putAll(more.parts);
        abnormal.addAll(more.abnormal);
        notDone.addAll(more.notDone);
    }

    /** Returns the readings, one for each check. */
    public Map<Check, Reading> readings() {
        return Collections.unmodifiableMap(readings);
    }

    /** Returns what was measured at each wheel. */
    public Map<WheelId, WheelReading> wheels() {
        return Collections.unmodifiableMap(wheels);
    }

    /** Returns the parts that were looked at. */
    public Map<Component, PartReading> parts() {
        return Collections.unmodifiableMap(parts);
    }

    /** Returns what was noticed that a sound vehicle does not show, in order. */
    public List<Abnormal> abnormal() {
        return Collections.unmodifiableList(abnormal);
    }

    /** Returns what could not be done, in order. */
    public List<NotDone> notDone() {
        return Collections.unmodifiableList(notDone);
    }
}
