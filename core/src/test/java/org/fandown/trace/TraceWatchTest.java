package org.fandown.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.fandown.air.AirVehicles;
import org.fandown.check.Check;
import org.fandown.evidence.Reading;
import org.fandown.trace.Recognised.Kind;
import org.fandown.trace.TestDrive.Recorder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TraceWatchTest {
    /** A test whose vehicle is drawn by lot; this one is a sound combination. */
    private static final TestDrive SOUND = TestDrive.sound(AirVehicles.tractorTrailer(), 7);

    private static Recognised last(List<Recognised> found, Kind kind) {
        return found.stream().filter(f -> f.kind() == kind).reduce((a, b) -> b).orElseThrow();
    }

    private static TestDrive.Event lastTrue(Kind kind) {
        return SOUND.events().stream()
                .filter(e -> e.kind() == kind)
                .reduce((a, b) -> b)
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"0.1, 10, 0.02", "1, 1, 0.1", "1.16, 1, 0.05", "1, 50, 0.3", "0.1, 100, 0.1"})
    void a_whole_test_in_the_cab_is_recognised(double step, double rate, double noise) {
        List<Recognised> found = SOUND.recognised(new Recorder(step, rate, noise), true, 3);

        assertThat(found)
                .extracting(Recognised::kind)
                .contains(
                        Kind.BUILD_UP,
                        Kind.CUT_OUT,
                        Kind.CUT_IN,
                        Kind.LOSS_RELEASED,
                        Kind.LOSS_APPLIED,
                        Kind.WARNING,
                        Kind.TRAILER_CLOSED,
                        Kind.PARKING_CLOSED,
                        Kind.APPLICATIONS)
                .doesNotContain(Kind.LOSS, Kind.SUPPLY_DRAINED);
        for (Kind kind : List.of(Kind.CUT_OUT, Kind.CUT_IN)) {
            assertThat(last(found, kind).value())
                    .as(kind.name())
                    .isCloseTo(lastTrue(kind).psi(), within(step + 1));
        }
        for (Kind kind : List.of(Kind.WARNING, Kind.TRAILER_CLOSED, Kind.PARKING_CLOSED)) {
            assertThat(last(found, kind).to())
                    .as(kind.name())
                    .isCloseTo(lastTrue(kind).seconds(), within(2.5));
        }
    }

    @Test
    void losses_lie_where_the_engine_stood_and_the_pedal_was_as_they_say() {
        for (Recognised found : SOUND.recognised(new Recorder(0.1, 10, 0.02), true, 5)) {
            if (found.kind() == Kind.LOSS_RELEASED || found.kind() == Kind.LOSS_APPLIED) {
                boolean applied = found.kind() == Kind.LOSS_APPLIED;
                assertThat(SOUND.isStill(found.from())).isTrue();
                assertThat(SOUND.isBraked(found.from())).isEqualTo(applied);
                assertThat(SOUND.isBraked(found.to())).isEqualTo(applied);
                double lost = SOUND.lossBetween(found.from(), found.to());
                assertThat(found.value()).isCloseTo(lost, within(0.6));
            }
        }
    }

    @Test
    void without_engine_speed_nothing_is_said_of_the_engine() {
        List<Recognised> found = SOUND.recognised(new Recorder(0.1, 10, 0.02), false, 3);

        assertThat(found).isNotEmpty().allMatch(f -> Double.isNaN(f.engine()));
        assertThat(found).extracting(Recognised::kind).contains(Kind.CUT_OUT, Kind.WARNING);
    }

    @Test
    void a_drive_without_a_test_shows_none() {
        TraceWatch watch =
                new TraceWatch(
                        found -> {
                            throw new AssertionError("Nothing was done, but found " + found);
                        });
        for (int t = 0; t < 30; t++) {
            watch.sample(Channel.PRIMARY, t, 117 - t / 25);
            watch.sample(Channel.SECONDARY, t, 117);
            watch.sample(Channel.SPEED, t, 40);
            watch.sample(Channel.ENGINE_SPEED, t, 1400);
        }
        watch.finish();
    }

    @Test
    void an_emptied_supply_reservoir_tests_the_check_valves() {
        assertThat(drained(0)).isEqualTo(true);
        assertThat(drained(0.5)).isEqualTo(false);
    }

    /** A supply reservoir that leaks, or is emptied by braking, tests no check valve. */
    @ParameterizedTest
    @CsvSource({"0.3, 0, 0", "4, 1, 0", "4, 0, 1"})
    void a_supply_reservoir_that_empties_otherwise_is_no_test(
            double perSecond, int braked, int drained) {
        List<Recognised> found = new ArrayList<>();
        TraceWatch watch = new TraceWatch(found::add);
        for (int t = 0; t < 400; t++) {
            watch.sample(Channel.PRIMARY, t, 100);
            watch.sample(Channel.SECONDARY, t, 100);
            watch.sample(Channel.SUPPLY, t, Math.max(0, 110 - perSecond * Math.max(0, t - 10)));
            watch.sample(Channel.BRAKE_SWITCH, t, t % 8 == 0 ? braked : 0);
        }
        watch.finish();

        assertThat(found.stream().filter(f -> f.kind() == Kind.SUPPLY_DRAINED)).hasSize(drained);
    }

    private static boolean drained(double falling) {
        List<Recognised> found = new ArrayList<>();
        TraceWatch watch = new TraceWatch(found::add);
        for (int t = 0; t < 60; t++) {
            watch.sample(Channel.PRIMARY, t, 100 - falling * t);
            watch.sample(Channel.SECONDARY, t, 100);
            watch.sample(Channel.SUPPLY, t, Math.max(0, 110 - 4 * t));
        }
        watch.finish();
        Reading reading = TraceReadings.of(found).readings().get(Check.CHECK_VALVE);
        return ((Reading.Answer) Objects.requireNonNull(reading)).yes();
    }

    @Test
    void readings_carry_what_the_trace_tells_and_its_doubt() {
        List<Recognised> found = SOUND.recognised(new Recorder(1, 10, 0.1), true, 3);
        TraceReadings readings = TraceReadings.of(found);

        Reading.Estimate cutOut =
                (Reading.Estimate) readings.readings().get(Check.GOVERNOR_CUT_OUT);
        assertThat(cutOut.within().value()).isGreaterThan(0.3);
        assertThat(readings.readings())
                .containsKeys(
                        Check.BUILD_UP,
                        Check.GOVERNOR_CUT_IN,
                        Check.AIR_LOSS_RELEASED,
                        Check.AIR_LOSS_APPLIED,
                        Check.LOW_AIR_WARNING,
                        Check.RESERVOIR_RESERVE);
    }
}
