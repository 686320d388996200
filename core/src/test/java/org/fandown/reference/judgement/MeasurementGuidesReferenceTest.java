package org.fandown.reference.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fandown.yard.Packs.rule;

import java.util.Map;
import org.fandown.evidence.Instruments;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Status;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.yard.Trial;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the guides on measurement and conformity ask of a stated uncertainty and a decision. */
class MeasurementGuidesReferenceTest {
    /** The guide prints two digits. */
    private static final double PRINTED_TO_TWO_DIGITS = 0.005;

    /** Square roots in double arithmetic, worked to ten digits by hand. */
    private static final double WORKED_TO_TEN_DIGITS = 1e-10;

    @Source(
            work = "JCGM 100, Guide to the expression of uncertainty in measurement",
            edition = "2008",
            where = "F.2.2.1: a step of dx has a standard uncertainty of 0.29 dx",
            kind = Kind.STANDARD,
            accessed = "2026-11-25",
            note = "clause from memory; the figure is 1 / sqrt(12)")
    @ParameterizedTest(name = "{2}")
    @CsvSource({"1 psi, 0.29, F.2.2.1", "2 psi, 0.58, F.2.2.1", "0.1 psi, 0.029, F.2.2.1"})
    void step_of_an_instrument_is_a_rectangle(String step, double expected, String where) {
        Instruments gauge = new Instruments(Map.of(Dimension.GAUGE_PRESSURE, Quantity.parse(step)));

        assertThat(gauge.standardUncertainty(Unit.PSI))
                .isEqualTo(expected, within(PRINTED_TO_TWO_DIGITS));
    }

    @Source(
            work = "JCGM 100, Guide to the expression of uncertainty in measurement",
            edition = "2008",
            where =
                    "4.3.7 (half-width a: a^2 / 3), 5.1.2 (independent parts add by squares), 6.2.1"
                            + " (coverage factor 2)",
            kind = Kind.STANDARD,
            accessed = "2026-11-25",
            note = "clauses from memory; the figures are worked by hand from them")
    @ParameterizedTest(name = "{4}")
    @CsvSource({
        "1 psi, 1 s,   0,  0.8164965809, needle alone: 2 sqrt(2 x 0.5^2 / 3)",
        "2 psi, 1 s,   0,  1.6329931619, needle alone at twice the step",
        "1 psi, 1 s,   6,  0.8205689083, 6 psi in 60 s: clock adds 6 x 0.8165 / 60",
        "1 psi, 0.1 s, 60, 0.8205689083, 60 psi in 60 s with a tenth of the step"
    })
    void doubt_of_a_loss_is_worked_out_from_needle_and_clock(
            String gauge, String clock, double lost, double expected, String where) {
        Finding finding =
                loss("'gauge': '" + gauge + "', 'clock': '" + clock + "'", lost + " psi").only();

        assertThat(finding.measured().orElseThrow().uncertainty())
                .isEqualTo(expected, within(WORKED_TO_TEN_DIGITS));
    }

    @Source(
            work = "JCGM 106, The role of measurement uncertainty in conformity assessment",
            edition = "2012",
            where =
                    "8.3.2 guarded acceptance: accept up to the limit less U; 8.3.3 guarded"
                            + " rejection: reject from the limit and U",
            kind = Kind.STANDARD,
            accessed = "2026-11-25",
            note = "clauses from memory; U of a loss near 3 psi is 0.81751657 psi by JCGM 100")
    @ParameterizedTest(name = "{2}")
    @CsvSource({
        "2.180, MET,          below 3 - U",
        "2.186, UNDETERMINED, above 3 - U",
        "3,     UNDETERMINED, at the limit",
        "3.814, UNDETERMINED, below 3 + U",
        "3.821, NOT_MET,      above 3 + U"
    })
    void loss_is_decided_only_beyond_the_guard_bands(double lost, Status expected, String where) {
        assertThat(loss("'gauge': '1 psi', 'clock': '1 s'", lost + " psi").status())
                .isEqualTo(expected);
    }

    @Source(
            work = "JCGM 106, The role of measurement uncertainty in conformity assessment",
            edition = "2012",
            where = "8.3.2 and 8.3.3, tolerance interval with both ends",
            kind = Kind.STANDARD,
            accessed = "2026-11-25",
            note = "clauses from memory; one reading to 2 psi is off by 1 psi at most")
    @ParameterizedTest(name = "{2}")
    @CsvSource({
        "103.9 psi, NOT_MET,      below the lower end less U",
        "104 psi,   UNDETERMINED, at the lower end less U",
        "105.9 psi, UNDETERMINED, inside the lower guard band",
        "106 psi,   MET,          at the lower end and U",
        "134 psi,   MET,          at the upper end less U",
        "134.1 psi, UNDETERMINED, inside the upper guard band",
        "136 psi,   UNDETERMINED, at the upper end and U",
        "136.1 psi, NOT_MET,      above the upper end and U"
    })
    void both_ends_of_a_range_are_guarded(String reading, Status expected, String where) {
        Trial trial =
                Trial.of(
                        rule(
                                "xa.cut-out",
                                "governor-cut-out",
                                "'limit': {'range': ['105 psi', '135 psi']}"),
                        "'instruments': {'gauge': '2 psi'}, 'readings': {'governor-cut-out': '"
                                + reading
                                + "'}");

        assertThat(trial.status()).isEqualTo(expected);
    }

    private static Trial loss(String instruments, String lost) {
        return Trial.of(
                rule(
                        "xa.loss",
                        "air-loss-applied",
                        "'limit': {'at-most': '3 psi', 'per': '1 min'}"),
                "'instruments': {"
                        + instruments
                        + "}, 'readings': {'air-loss-applied': {'loss': '"
                        + lost
                        + "', 'time': '60 s'}}");
    }
}
