package org.fandown.operator;

import java.util.Map;
import org.fandown.check.Check;
import org.fandown.check.Circumstance;
import org.fandown.evidence.Circumstances;
import org.fandown.procedure.CheckStep;
import org.fandown.rulebook.Demand;
import org.fandown.rulebook.Ruling;

/** Checks in which the vehicle moves, or must not. */
final class RollChecks {
    /** One turn of a wheel, m. */
    private static final double TURN = 3.2;

    /** Walking pace, m/s. */
    private static final double WALKING = 0.8;

    private static final double PATIENCE = 30;

    /** From walking pace a vehicle stands within, s (assumption). */
    private static final double STOPS = 4;

    private static final int PEDAL = 40;
    private static final int HAND = 60;

    private RollChecks() {}

    static void addTo(Map<Check, Performing> all) {
        all.put(Check.PARKING_BRAKE_HOLD, RollChecks::holds);
        all.put(Check.TRAILER_BRAKES_HOLD, RollChecks::holds);
        all.put(Check.TRAILER_SPRING_BRAKES_APPLY, RollChecks::holds);
        all.put(Check.COUPLING_TUG, RollChecks::holds);
        all.put(Check.PARKING_BRAKE_RELEASE, RollChecks::turns);
        all.put(Check.SERVICE_BRAKE_RESPONSE, RollChecks::service);
        all.put(Check.TRAILER_SERVICE_BRAKES, RollChecks::trailer);
    }

    /** What holds, with the gear as the rule names the one that is chosen. */
    private static Circumstances noted(CheckStep step, Person person) {
        Conditions now = Conditions.now(person).state(Circumstance.GEAR, "low");
        for (Ruling ruling : step.rulings()) {
            for (Demand demand : ruling.rule().method().demands()) {
                boolean low = demand.states().contains("low");
                if (demand.circumstance() == Circumstance.GEAR && !low) {
                    // The gearbox has one gear forward: it is the highest to start in as well.
                    now.state(Circumstance.GEAR, demand.states().get(0));
                }
            }
        }
        return now.noted();
    }

    private static Observed holds(CheckStep step, Person person) {
        Circumstances noted = noted(step, person);
        boolean moved = new Drive(person).pull();
        return new Observed()
                .answer(step.check(), !moved, noted, "a gentle pull moves the vehicle");
    }

    private static Observed turns(CheckStep step, Person person) {
        Circumstances noted = noted(step, person);
        Drive drive = new Drive(person);
        double from = person.metres();
        boolean rolled = drive.roll(() -> Math.abs(person.metres() - from) > TURN, PATIENCE);
        drive.disengage();
        stop(person, drive);
        return new Observed().answer(step.check(), rolled, noted, "the wheels do not turn free");
    }

    private static Observed service(CheckStep step, Person person) {
        Circumstances noted = noted(step, person);
        Drive drive = new Drive(person);
        if (!walking(person, drive)) {
            return new Observed()
                    .abnormal(Check.PARKING_BRAKE_RELEASE, "the wheels do not turn free")
                    .notDone(step.check(), "the vehicle does not come to walking pace");
        }
        boolean stands = stop(person, drive);
        return new Observed()
                .answer(step.check(), stands, noted, "the pedal does not stop the vehicle");
    }

    private static Observed trailer(CheckStep step, Person person) {
        Circumstances noted = noted(step, person);
        Drive drive = new Drive(person);
        if (!walking(person, drive)) {
            return new Observed()
                    .abnormal(Check.TRAILER_BRAKES_RELEASE, "the wheels do not turn free")
                    .notDone(step.check(), "the vehicle does not come to walking pace");
        }
        person.cab().hand(HAND);
        boolean stands = drive.stands(STOPS);
        person.cab().hand(0);
        stop(person, drive);
        return new Observed()
                .answer(step.check(), stands, noted, "the hand valve does not slow it");
    }

    private static boolean walking(Person person, Drive drive) {
        boolean rolls = drive.roll(() -> person.dash().metresPerSecond() > WALKING, PATIENCE);
        drive.disengage();
        return rolls;
    }

    private static boolean stop(Person person, Drive drive) {
        person.cab().foot(PEDAL);
        boolean stands = drive.stands(STOPS);
        person.cab().foot(stands ? PEDAL : Cab.FLOOR);
        drive.stands(STOPS);
        person.cab().foot(0);
        person.pass(2);
        return stands;
    }
}
