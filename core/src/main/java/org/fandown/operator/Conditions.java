package org.fandown.operator;

import java.util.EnumMap;
import java.util.Map;
import org.fandown.check.Circumstance;
import org.fandown.evidence.Circumstances;
import org.fandown.units.Num;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/** What holds while a reading is taken, as the operator notes it beside the reading. */
final class Conditions {
    private static final double TACHOMETER = 50;
    private static final int FAST = 1000;

    private final Map<Circumstance, String> states = new EnumMap<>(Circumstance.class);
    private final Map<Circumstance, Quantity> quantities = new EnumMap<>(Circumstance.class);

    private Conditions() {}

    /** Notes what holds now. */
    static Conditions now(Person person) {
        Conditions now = new Conditions();
        Cab cab = person.cab();
        double rpm = Num.round(cab.rpm() / TACHOMETER) * TACHOMETER;
        now.state(
                Circumstance.ENGINE,
                !cab.engineRuns() ? "off" : rpm >= FAST ? "fast-idle" : "idle");
        now.quantities.put(Circumstance.ENGINE_SPEED, Quantity.of(rpm, Unit.RPM));
        now.state(Circumstance.KEY, cab.keyOn() ? "on" : "off");
        now.state(Circumstance.SERVICE_BRAKE, cab.foot() > 0 ? "applied" : "released");
        now.state(Circumstance.FULLY_APPLIED, cab.foot() == Cab.FLOOR ? "yes" : "no");
        now.state(Circumstance.PARKING_BRAKE, cab.parked() ? "set" : "released");
        now.state(Circumstance.WHEELS, person.chocked() ? "chocked" : "free");
        now.state(Circumstance.TANKS, person.supplyDrained() ? "drained" : "not-drained");
        now.state(Circumstance.GEAR, cab.gear());
        now.state(Circumstance.GROUND, person.onLevelGround() ? "level" : "sloping");
        now.pressure(Circumstance.RESERVOIR_PRESSURE, cab.needles().lower());
        if (person.tows()) {
            now.towing(person);
        }
        return now;
    }

    private void towing(Person person) {
        boolean open = person.cab().trailerSupplyIn();
        state(Circumstance.TRAILER_SUPPLY, open ? "open" : "closed");
        state(Circumstance.TRAILER, person.trailerCharged() ? "charged" : "empty");
        state(Circumstance.TRAILER_LINES, person.linesInWords());
    }

    Conditions state(Circumstance what, String state) {
        states.put(what, state);
        return this;
    }

    Conditions pressure(Circumstance what, int psi) {
        quantities.put(what, Quantity.of(psi, Unit.PSI));
        return this;
    }

    /** Notes where the needles stood when the check began; the lower one counts. */
    Conditions from(Needles start) {
        return pressure(Circumstance.START_PRESSURE, start.lower());
    }

    /** Notes for how long something was held, to whole seconds. */
    Conditions held(double seconds) {
        quantities.put(Circumstance.HELD_FOR, Quantity.of(Math.floor(seconds + 1e-6), Unit.SECOND));
        return this;
    }

    Conditions quantity(Circumstance what, Quantity quantity) {
        quantities.put(what, quantity);
        return this;
    }

    Circumstances noted() {
        return new Circumstances(states, quantities);
    }
}
