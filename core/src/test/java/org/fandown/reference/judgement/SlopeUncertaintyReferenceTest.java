package org.fandown.reference.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fandown.judgement.Measurement;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.yard.Needle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A gauge that is read to whole psi: how far the loss in a minute may be off. The true loss is
 * known, because the readings are made from it; a needle falls evenly from 100 psi and a part of a
 * psi, its phase, and every phase in steps of 1/400 psi is tried.
 */
class SlopeUncertaintyReferenceTest {
    private static final int PHASES = 400;
    private static final int READINGS = 61;
    private static final double MINUTE = 60;

    /** Nine digits were worked out. */
    private static final double WORKED_TO_NINE_DIGITS = 1e-9;

    /** Six decimals were worked out by another program, over the same phases. */
    private static final double WORKED_TO_SIX_DECIMALS = 1e-6;

    /** The table has three decimals. */
    private static final double HALF_OF_THE_THIRD_DECIMAL = 0.0005;

    /** The fourth decimal was rounded. */
    private static final double HALF_OF_THE_FOURTH_DECIMAL = 0.00005;

    private static final double PROMISED_COVERAGE = 0.95;

    @Source(
            work = "Least squares: standard error of a slope, and variance of a rounding error",
            edition = "worked by hand",
            where = "q / sqrt(12) x sqrt(12 / (N (N^2 - 1))) / dt with q 1 psi, N 61, dt 1 s",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @Test
    void sixty_one_readings_are_never_taken_for_surer_than_independent_rounding_errors() {
        double standardError = 0.1259548407;
        double least = Double.MAX_VALUE;
        for (int k = 0; k < PHASES; k++) {
            least = Math.min(least, loss(4, k).uncertainty());
        }

        assertThat(least).isEqualTo(2 * standardError, within(WORKED_TO_NINE_DIGITS));
    }

    @Source(
            work = "Difference of two rounded readings",
            edition = "worked by hand",
            where = "q / sqrt(6) with q 1 psi",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @Test
    void two_readings_a_minute_apart_are_off_by_two_standard_errors() {
        assertThat(Needle.loss(4, 0.3, 0, MINUTE).uncertainty())
                .isEqualTo(2 * 0.4082482905, within(WORKED_TO_NINE_DIGITS));
    }

    @Source(
            work = "Difference of two rounded readings",
            edition = "worked by hand",
            where =
                    "triangular error between -q and q: share within 2 q / sqrt(6) is 1 - (1 - 2 /"
                            + " sqrt(6))^2 = 0.966327",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @Test
    void two_readings_hold_the_true_loss_over_all_phases_and_parts_of_a_psi_lost() {
        int held = 0;
        int parts = 100;
        for (int k = 0; k < parts; k++) {
            for (int part = 0; part < parts; part++) {
                double rate = 2 + (part + 0.5) / parts;
                Measurement loss = Needle.loss(rate, (k + 0.25) / parts, 0, MINUTE);
                held += holds(loss, rate) ? 1 : 0;
            }
        }

        // One part in a hundred is the coarseness of the trial.
        assertThat((double) held / parts / parts).isEqualTo(0.966327, within(0.01));
    }

    @Source(
            work = "Least squares through the readings of a needle that moves in whole steps",
            edition = "enumerated by another program over the same 400 phases",
            where = "61 readings a second apart, 1 psi steps, 2 psi in a minute",
            kind = Kind.OTHER_PROGRAM,
            accessed = "2026-11-25")
    @Test
    void error_at_two_psi_a_minute() {
        Errors errors = errors(2, Needle.even(READINGS, MINUTE));

        assertThat(errors.rms()).isEqualTo(0.212313, within(WORKED_TO_SIX_DECIMALS));
        assertThat(errors.greatest()).isEqualTo(0.429402, within(WORKED_TO_SIX_DECIMALS));
    }

    @Source(
            work = "Least squares through the readings of a needle that moves in whole steps",
            edition = "enumerated by another program over all sub-step phases",
            where = "61 readings a second apart, 1 psi steps; a row for each true loss",
            kind = Kind.OTHER_PROGRAM,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{3}")
    @CsvSource({
        "0.5, 0.584, 0.975, half a psi in a minute",
        "1,   0.425, 0.905, 1 psi in a minute",
        "2,   0.212, 0.429, 2 psi in a minute",
        "3,   0.141, 0.271, 3 psi in a minute",
        "4,   0.105, 0.192, 4 psi in a minute",
        "6,   0.069, 0.114, 6 psi in a minute"
    })
    void rounding_errors_of_successive_readings_do_not_average_out(
            double rate, double rms, double greatest, String where) {
        Errors errors = errors(rate, Needle.even(READINGS, MINUTE));

        assertThat(errors.rms()).isEqualTo(rms, within(HALF_OF_THE_THIRD_DECIMAL));
        assertThat(errors.greatest()).isEqualTo(greatest, within(HALF_OF_THE_THIRD_DECIMAL));
        assertThat(errors.held())
                .as("share of the phases in which the stated interval holds the true loss")
                .isGreaterThanOrEqualTo(PROMISED_COVERAGE);
    }

    @Source(
            work = "Least squares through the readings of a needle that moves in whole steps",
            edition = "enumerated by another program over all sub-step phases",
            where = "readings a second apart, 1 psi steps, 2 psi in a minute, longer windows",
            kind = Kind.OTHER_PROGRAM,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{3}")
    @CsvSource({"121, 0.054,  0.0005,  two minutes", "301, 0.0088, 0.00005, five minutes"})
    void longer_window_errs_less(int readings, double rms, double tolerance, String where) {
        Errors errors = errors(2, Needle.even(readings, readings - 1));

        assertThat(tolerance).isIn(HALF_OF_THE_THIRD_DECIMAL, HALF_OF_THE_FOURTH_DECIMAL);
        assertThat(errors.rms()).isEqualTo(rms, within(tolerance));
        assertThat(errors.held()).isGreaterThanOrEqualTo(PROMISED_COVERAGE);
    }

    @Source(
            work = "A loss that the readings are made from",
            edition = "enumerated in the test",
            where = "few readings, and losses of nearly a whole step from reading to reading",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{2}")
    @CsvSource({
        "3,   60,  three readings in a minute",
        "4,   60,  four readings in a minute",
        "5,   60,  five readings in a minute",
        "7,   60,  seven readings in a minute",
        "13,  120, one reading every ten seconds for two minutes",
        "31,  30,  one reading a second for half a minute",
        "61,  60,  one reading a second for a minute",
        "121, 120, one reading a second for two minutes"
    })
    void stated_interval_holds_every_loss_up_to_twelve_psi_a_minute(
            int readings, double seconds, String where) {
        for (int i = 1; i <= 60; i++) {
            double rate = i / 5.0;
            assertThat(errors(rate, Needle.even(readings, seconds)).held())
                    .as("at %s psi a minute", rate)
                    .isGreaterThanOrEqualTo(PROMISED_COVERAGE);
        }
    }

    /** The errors of the measured loss over all phases (psi per minute). */
    private record Errors(double rms, double greatest, double held) {}

    private static Errors errors(double rate, double... times) {
        double squares = 0;
        double greatest = 0;
        double held = 0;
        for (int k = 0; k < PHASES; k++) {
            Measurement loss = Needle.loss(rate, (double) k / PHASES, times);
            double error = loss.value() - rate;
            squares += error * error / PHASES;
            greatest = Math.max(greatest, Math.abs(error));
            held += holds(loss, rate) ? 1.0 / PHASES : 0;
        }
        return new Errors(Math.sqrt(squares), greatest, held);
    }

    private static Measurement loss(double rate, int phase) {
        return Needle.loss(rate, (double) phase / PHASES, Needle.even(READINGS, MINUTE));
    }

    private static boolean holds(Measurement loss, double rate) {
        double rounding = 1e-9;
        return loss.low() <= rate + rounding && loss.high() >= rate - rounding;
    }
}
