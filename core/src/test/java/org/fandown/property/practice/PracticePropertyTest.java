package org.fandown.property.practice;

import static java.util.Comparator.comparing;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.fandown.air.AirVehicles;
import org.fandown.check.Component;
import org.fandown.practice.Ground;
import org.fandown.practice.OperatorAction;
import org.fandown.practice.PracticeEvent;
import org.fandown.practice.PracticeTruck;
import org.fandown.practice.Scenario;
import org.fandown.practice.Signal;
import org.fandown.practice.StartState;
import org.fandown.practice.Verb;
import org.fandown.units.GaugePressure;
import org.fandown.units.Temperature;
import org.fandown.vehicle.Vehicle;

class PracticePropertyTest {
    private static final int ACTIONS = 25;

    /** A rule for a wild drive: at most what a truck in low gear and on 30 % can reach, m/s. */
    private static final double MOST_SPEED = 120;

    @Property(tries = 60, seed = "20261125")
    void anything_done_to_any_truck_gives_numbers_and_the_same_again(@ForAll long seed) {
        PracticeTruck once = drive(seed, 1);
        PracticeTruck again = drive(seed, 5);

        assertThat(again.fingerprint()).isEqualTo(once.fingerprint());
        assertThat(again.events()).isEqualTo(once.events());
        for (Signal signal : Signal.of(once)) {
            assertThat(signal.value(once)).as(signal.name()).isFinite();
        }
        assertThat(Math.abs(once.dash().metresPerSecond())).isLessThan(MOST_SPEED);
        assertThat(once.events()).isSortedAccordingTo(comparing(PracticeEvent::seconds));
    }

    private static PracticeTruck drive(long seed, int pieces) {
        SplittableRandom lot = new SplittableRandom(seed);
        PracticeTruck truck = PracticeTruck.of(scenario(lot));
        for (int i = 0; i < ACTIONS; i++) {
            truck.act(action(lot, truck.vehicle()));
            int ticks = lot.nextInt(200);
            for (int piece = 0; piece < pieces; piece++) {
                int part = ticks / pieces + (piece < ticks % pieces ? 1 : 0);
                truck.advance(part * PracticeTruck.TICK);
            }
        }
        return truck;
    }

    private static Scenario scenario(SplittableRandom lot) {
        List<Vehicle> vehicles = AirVehicles.all();
        Vehicle vehicle = vehicles.get(lot.nextInt(vehicles.size()));
        GaugePressure pressure = GaugePressure.ofPsi(lot.nextDouble(0, 140));
        StartState start = new StartState(pressure, lot.nextBoolean(), lot.nextBoolean());
        double grade = lot.nextBoolean() ? 0 : lot.nextDouble(-0.3, 0.3);
        Ground ground = new Ground(grade, Temperature.ofCelsius(lot.nextDouble(-40, 45)));
        return Scenario.of(vehicle).with(start).with(ground);
    }

    private static OperatorAction action(SplittableRandom lot, Vehicle vehicle) {
        Verb verb = one(lot, List.of(Verb.values()));
        String value =
                switch (verb.argument()) {
                    case WORD -> verb.words().get(lot.nextInt(verb.words().size()));
                    case TRAVEL -> lot.nextInt(101) + " %";
                    case ENGINE_SPEED -> lot.nextInt(3001) + " rpm";
                    case WHEEL -> one(lot, vehicle.wheels()).toString();
                    case RESERVOIR -> one(lot, List.of("supply", "primary", "parking", "unit2"));
                    case COUPLING -> Integer.toString(1 + lot.nextInt(4));
                    case STATION -> one(lot, List.of("cab", "front", "rear", "2L", "coupling 1"));
                    case PART -> one(lot, List.of(Component.values())).id();
                    case TEXT -> "anything";
                };
        return new OperatorAction(verb, value);
    }

    private static <T> T one(SplittableRandom lot, List<T> of) {
        return new ArrayList<>(of).get(lot.nextInt(of.size()));
    }
}
