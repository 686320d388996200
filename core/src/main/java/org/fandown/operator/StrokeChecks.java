package org.fandown.operator;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fandown.check.Check;
import org.fandown.check.Component;
import org.fandown.evidence.Circumstances;
import org.fandown.evidence.WheelReading;
import org.fandown.evidence.WheelReading.Measured;
import org.fandown.practice.Station;
import org.fandown.procedure.Aspect;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.Need;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.vehicle.WheelId;

/** Strokes by rule and pry bar, and what the hand feels at slack adjusters. */
final class StrokeChecks {
    /** A rule is put on, read and taken off in, s. */
    private static final double READS = 6;

    /** Highest reservoir pressure at which rules let strokes be measured, psi. */
    private static final int MOST = 100;

    private static final int TIMES = 8;
    private static final int SPARE = 3;

    private StrokeChecks() {}

    static void addTo(Map<Check, Performing> all) {
        all.put(Check.PUSHROD_APPLIED_STROKE, StrokeChecks::applied);
        all.put(Check.PUSHROD_FREE_STROKE, StrokeChecks::free);
        all.put(Check.ADJUSTER_HAND_PLAY, StrokeChecks::free);
        all.put(Check.ADJUSTERS_CHECKED, StrokeChecks::byHand);
    }

    /** Each rod released, then each with the pedal held down. */
    private static Observed applied(CheckStep step, Person person) {
        person.helper(true);
        Map<WheelId, Quantity> before = round(person);
        // Nobody is at a rod when it moves.
        person.stand(person.spot());
        Needles start = press(person);
        for (int i = 0; i < TIMES && !inRange(step, person); i++) {
            if (person.cab().needles().lower() < least(step)) {
                refill(least(step), start, person);
            } else {
                person.cab().foot(0);
                person.pass(2);
            }
            start = press(person);
        }
        Circumstances noted = Conditions.now(person).from(start).noted();
        Map<WheelId, Quantity> after = round(person);
        person.cab().foot(0);
        person.pass(2);
        person.stand(person.spot());
        Observed observed = new Observed();
        for (WheelId wheel : step.manner().wheels()) {
            if (after.containsKey(wheel) && before.containsKey(wheel)) {
                Quantity stroke = difference(after.get(wheel), before.get(wheel));
                observed.wheel(reading(wheel, step.check(), new Measured(stroke, 2), noted));
            }
        }
        Compared.strokes(person, before, after, observed);
        return observed;
    }

    /** Presses the pedal; returns what the needles showed before. */
    private static Needles press(Person person) {
        Needles start = person.cab().needles();
        person.cab().foot(Cab.FLOOR);
        person.pass(2);
        return start;
    }

    private static boolean inRange(CheckStep step, Person person) {
        Needles now = person.cab().needles();
        return now.higher() <= MOST && now.lower() >= least(step);
    }

    /** The pressure the step asks for has to be there with the pedal down. */
    private static int least(CheckStep step) {
        int least = 0;
        for (Need need : step.needs()) {
            least = need.aspect() == Aspect.PRESSURE ? Math.max(least, need.least()) : least;
        }
        return least;
    }

    /** The helper builds up what the application takes, and stops the engine again. */
    private static void refill(int least, Needles start, Person person) {
        int taken = start.lower() - person.cab().needles().lower();
        person.cab().foot(0);
        person.pass(2);
        person.air().pumpTo(least + taken + SPARE, Air.FAST_IDLE);
        person.cab().stop();
        person.pass(2);
    }

    private static Map<WheelId, Quantity> round(Person person) {
        Rods rods = new Rods(person);
        Map<WheelId, Quantity> lengths = new TreeMap<>();
        for (WheelId wheel : person.vehicle().wheelsWithPushRod()) {
            person.standAt(Station.at(wheel));
            person.pass(READS);
            rods.measure(wheel).ifPresent(length -> lengths.put(wheel, length));
        }
        return lengths;
    }

    /** Both were read in sixteenths, so their difference is one of sixteenths too. */
    private static Quantity difference(Quantity out, Quantity in) {
        double inches = Math.max(0, out.valueIn(Unit.INCH) - in.valueIn(Unit.INCH));
        return Quantity.of(inches, Unit.INCH);
    }

    private static WheelReading reading(
            WheelId wheel, Check check, Measured measured, Circumstances at) {
        return new WheelReading(
                wheel, Map.of(check, measured), Map.of(), Optional.empty(), List.of(), at);
    }

    private static Observed free(CheckStep step, Person person) {
        Observed observed = new Observed();
        Circumstances noted = Conditions.now(person).noted();
        pryAll(step, person, observed)
                .forEach(
                        (wheel, length) ->
                                observed.wheel(
                                        reading(
                                                wheel,
                                                step.check(),
                                                new Measured(length, 1),
                                                noted)));
        return observed;
    }

    private static Observed byHand(CheckStep step, Person person) {
        Observed observed = new Observed();
        boolean all = pryAll(step, person, observed).size() == step.manner().wheels().size();
        return observed.answer(
                step.check(), all, Conditions.now(person).noted(), "one cannot be pulled");
    }

    private static Map<WheelId, Quantity> pryAll(CheckStep step, Person person, Observed observed) {
        Rods rods = new Rods(person);
        Map<WheelId, Quantity> lengths = new TreeMap<>();
        for (WheelId wheel : step.manner().wheels()) {
            person.standAt(Station.at(wheel));
            person.pass(2 * READS);
            Optional<Quantity> free = rods.pry(wheel);
            free.ifPresent(length -> lengths.put(wheel, length));
            if (free.isEmpty()) {
                observed.abnormal(
                        Check.PARKING_BRAKE_RELEASE, "the brake at " + wheel + " is not off");
            }
        }
        person.stand(person.spot());
        lengths.forEach((wheel, length) -> Compared.freeStroke(wheel, length, observed));
        return lengths;
    }

    /** What a person notices who compares rods with each other and with what is usual. */
    static final class Compared {
        private Compared() {}

        static void strokes(
                Person person,
                Map<WheelId, Quantity> before,
                Map<WheelId, Quantity> after,
                Observed observed) {
            int last = person.vehicle().powerUnit().axles().size();
            before.forEach(
                    (wheel, length) -> {
                        if (inches(length) > Rods.BACK) {
                            observed.abnormal(
                                    Check.PARKING_BRAKE_RELEASE,
                                    "released, the rod at " + wheel + " stands out " + length);
                        }
                    });
            after.forEach(
                    (wheel, length) -> {
                        if (inches(length) < Rods.OUT) {
                            observed.abnormal(
                                    wheel.axle() <= last
                                            ? Check.SERVICE_BRAKE_RESPONSE
                                            : Check.TRAILER_SERVICE_BRAKES,
                                    "the rod at " + wheel + " does not come out with the pedal");
                        }
                        Quantity mate = after.get(wheel.opposite());
                        if (mate != null && inches(length) < Rods.ALIKE * inches(mate)) {
                            observed.abnormal(
                                    Component.SERVICE_BRAKES,
                                    "the rod at " + wheel + " lags behind its mate");
                        }
                    });
        }

        static void freeStroke(WheelId wheel, Quantity length, Observed observed) {
            boolean usual =
                    inches(length) >= Usual.FREE_STROKE_LEAST
                            && inches(length) <= Usual.FREE_STROKE_MOST;
            if (!usual) {
                observed.abnormal(
                        Check.PUSHROD_FREE_STROKE, "at " + wheel + " the rod moves " + length);
            }
        }

        private static double inches(Quantity length) {
            return length.valueIn(Unit.INCH);
        }
    }
}
