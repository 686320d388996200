package org.fandown.operator;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fandown.check.Check;
import org.fandown.check.Component;
import org.fandown.evidence.Circumstances;
import org.fandown.evidence.Observations;
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
    private final List<Abnormal> abnormal = new ArrayList<>();
    private final List<NotDone> notDone = new ArrayList<>();
    private Observations noted = Observations.NONE;

    Observed reading(Reading reading) {
        Map<Check, Reading> one = new EnumMap<>(Check.class);
        one.put(reading.check(), reading);
        return note(Observations.of(one));
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
        Map<WheelId, WheelReading> one = new TreeMap<>();
        one.put(reading.wheel(), reading);
        return note(new Observations(Map.of(), one, Map.of(), false));
    }

    /** Notes what was seen of a part. */
    Observed part(PartReading reading) {
        Map<Component, PartReading> one = new EnumMap<>(Component.class);
        one.put(reading.part(), reading);
        return note(new Observations(Map.of(), Map.of(), one, false));
    }

    private Observed note(Observations more) {
        noted = noted.then(more);
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
        note(more.noted);
        abnormal.addAll(more.abnormal);
        notDone.addAll(more.notDone);
    }

    /** Returns what was read, measured and seen. */
    public Observations noted() {
        return noted;
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
