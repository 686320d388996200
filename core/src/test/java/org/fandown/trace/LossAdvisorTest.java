package org.fandown.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.fandown.air.AirVehicles;
import org.fandown.check.Check;
import org.fandown.trace.Recognised.Kind;
import org.fandown.trace.SequentialTest.State;
import org.fandown.trace.TestDrive.Recorder;
import org.junit.jupiter.api.Test;

class LossAdvisorTest {
    private static final List<Recorder> RECORDERS =
            List.of(
                    new Recorder(0.1, 10, 0.02),
                    new Recorder(1, 1, 0.1),
                    new Recorder(1.16, 1, 0.05),
                    new Recorder(0.1, 1, 0.3));

    private static final int DRIVES = 8;
    private static final double ASKED = 60;

    private static LossLimit limit(Check check, double most) {
        return new LossLimit(check, "rule", "at most some psi", most, ASKED);
    }

    /** A straight fall, engine off and pedal down from the first second on. */
    private static List<LossAdvice> fall(double loss, double most, int seconds, double step) {
        List<LossAdvice> said = new ArrayList<>();
        LossAdvisor advisor =
                new LossAdvisor(List.of(limit(Check.AIR_LOSS_APPLIED, most)), said::add);
        TraceWatch watch = new TraceWatch(advisor::closed);
        for (int t = 0; t <= seconds; t++) {
            double psi = 100 - loss * t / 60;
            watch.sample(Channel.PRIMARY, t, step * Math.floor(psi / step + 0.5));
            watch.sample(Channel.BRAKE_SWITCH, t, 1);
            watch.sample(Channel.ENGINE_SPEED, t, 0);
            advisor.look(watch);
        }
        watch.finish();
        assertThat(advisor.ended()).hasSize(1);
        return said;
    }

    @Test
    void clear_case_is_certain_before_the_time_is_over_and_the_time_stays() {
        List<LossAdvice> said = fall(1, 4, 90, 0.1);
        LossAdvice first = said.stream().filter(LossAdvice::isDecided).findFirst().orElseThrow();

        assertThat(first.state()).isEqualTo(State.WITHIN);
        assertThat(first.held()).isLessThan(60);
        assertThat(first.left()).isGreaterThan(0);
        assertThat(said).anyMatch(a -> !a.ended() && a.isDecided() && a.left() <= 0);
        assertThat(said.get(said.size() - 1).ended()).isTrue();
        assertThat(said.get(said.size() - 1).decidedAfter()).isEqualTo(first.held());
    }

    @Test
    void large_loss_is_certain_to_be_over() {
        assertThat(fall(9, 4, 90, 1)).anyMatch(a -> a.state() == State.OVER && a.held() < 60);
    }

    @Test
    void loss_at_the_limit_is_not_decided_and_how_long_it_would_take_is_said() {
        LossAdvice near = last(fall(3.4, 4, 75, 1));
        assertThat(near.state()).isEqualTo(State.UNDECIDED);
        assertThat(near.more()).isBetween(1.0, 300.0);

        LossAdvice at = last(fall(4, 4, 75, 1));
        assertThat(at.state()).isEqualTo(State.UNDECIDED);
        assertThat(at.more()).isNaN();
    }

    @Test
    void short_test_is_not_decided_to_be_long_enough() {
        LossAdvice brief = last(fall(0.5, 4, 55, 0.1));

        assertThat(brief.state()).isEqualTo(State.WITHIN);
        assertThat(brief.left()).isEqualTo(5, within(1.0));
    }

    private static LossAdvice last(List<LossAdvice> said) {
        return said.get(said.size() - 1);
    }

    @Test
    void pressure_that_never_changed_may_hide_a_step_of_the_gauge() {
        List<LossAdvice> said = fall(0, 3, 90, 1);

        assertThat(said.get(0).state()).isEqualTo(State.UNDECIDED);
        assertThat(last(said).state()).isEqualTo(State.WITHIN);
        assertThat(last(said).decidedAfter()).isGreaterThan(45);
    }

    @Test
    void loss_without_a_pedal_is_held_against_no_limit() {
        LossAdvisor advisor =
                new LossAdvisor(
                        List.of(limit(Check.AIR_LOSS_APPLIED, 4)),
                        said -> {
                            throw new AssertionError(said);
                        });
        TraceWatch watch = new TraceWatch(advisor::closed);
        for (int t = 0; t <= 100; t++) {
            watch.sample(Channel.PRIMARY, t, 100 - t / 60.0);
            advisor.look(watch);
        }
        watch.finish();
        assertThat(advisor.ended()).isEmpty();
    }

    /**
     * Simulated tests of vehicles drawn by lot, each against three limits: what it truly loses in
     * the time asked for, and 2 psi a minute more and less than that. Of 45 such tests 2 were
     * decided with the limit at the truth, and all and rightly with the others.
     */
    @Test
    void error_rates_hold_over_simulated_tests() {
        Tally atLimit = new Tally();
        Tally below = new Tally();
        Tally above = new Tally();
        for (int i = 0; i < DRIVES; i++) {
            TestDrive drive =
                    TestDrive.of(
                            List.of(AirVehicles.tractorTrailer(), AirVehicles.integratedTruck()),
                            100 + i);
            Recorder recorder = RECORDERS.get(i % RECORDERS.size());
            for (Recognised loss : drive.recognised(recorder, true, i)) {
                if (loss.kind() == Kind.LOSS_APPLIED || loss.kind() == Kind.LOSS_RELEASED) {
                    double end = Math.min(loss.to(), loss.from() + ASKED - Losses.SETTLE);
                    double truth = drive.lossBetween(loss.from(), end);
                    List<State> states = decided(drive, recorder, i, loss, truth);
                    atLimit.add(states.get(0));
                    below.add(states.get(1));
                    above.add(states.get(2));
                }
            }
        }
        assertThat(atLimit.within + atLimit.over + atLimit.open).isGreaterThan(10);
        assertThat(atLimit.within + atLimit.over).isLessThanOrEqualTo(1);
        assertThat(below.over).isZero();
        assertThat(below.open).isLessThanOrEqualTo(1);
        assertThat(above.within).isZero();
        assertThat(above.open).isLessThanOrEqualTo(1);
    }

    private static final class Tally {
        private int within;
        private int over;
        private int open;

        void add(State state) {
            within += state == State.WITHIN ? 1 : 0;
            over += state == State.OVER ? 1 : 0;
            open += state == State.UNDECIDED ? 1 : 0;
        }
    }

    private static List<State> decided(
            TestDrive drive, Recorder recorder, long seed, Recognised loss, double truth) {
        Check check =
                loss.kind() == Kind.LOSS_APPLIED ? Check.AIR_LOSS_APPLIED : Check.AIR_LOSS_RELEASED;
        LossAdvisor advisor =
                new LossAdvisor(
                        List.of(
                                limit(check, truth),
                                limit(check, truth + 2),
                                limit(check, truth - 2)),
                        said -> {});
        TraceWatch watch = new TraceWatch(advisor::closed);
        drive.record(
                recorder,
                true,
                seed,
                (channel, seconds, value) -> {
                    if (seconds > loss.from() - 30 && seconds < loss.to() + 20) {
                        watch.sample(channel, seconds, value);
                        advisor.look(watch);
                    }
                });
        watch.finish();
        return advisor.ended().stream()
                .filter(a -> Math.abs(a.loss().from() - loss.from()) < 2)
                .map(LossAdvice::state)
                .toList();
    }
}
