package org.fandown.reference.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import org.fandown.judgement.Finding;
import org.fandown.judgement.Status;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Tractor with two chambers of type 20 (54 in3 each) and four of type 30 (89 in3 each): 2 x 54 + 4
 * x 89 = 464 in3, times 12 = 5568 in3. Trailer with four of type 30: 356 in3, times 8 = 2848 in3.
 */
class UnitedStatesReservoirReferenceTest {
    private static final String TODAY = "2026-03-02";

    @Source(
            work = "49 CFR 571.121, air brake systems",
            edition = "as amended 87 FR 34808 (8 June 2022)",
            where = "S5.1.2.1 with Table V",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0} in3: {1}")
    @CsvSource({"5568, MET, S5.1.2.1", "5567, NOT_MET, S5.1.2.1", "7424, MET, S5.1.2.1"})
    void tractor_needs_5568_cubic_inches_of_reservoir(
            int cubicInches, Status expected, String where) {
        Finding finding = judged(cubicInches, 2848, "").finding("us.reservoir-volume.fmvss-121");

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(Judged.section(finding)).isEqualTo(where);
        assertThat(finding.decides()).isFalse();
    }

    @Source(
            work = "49 CFR 571.121, air brake systems",
            edition = "as amended 87 FR 34808 (8 June 2022)",
            where = "S5.2.1.1 with Table V",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0} in3: {1}")
    @CsvSource({"2848, MET, S5.2.1.1", "2847, NOT_MET, S5.2.1.1"})
    void trailer_with_one_service_reservoir_needs_2848_cubic_inches(
            int cubicInches, Status expected, String where) {
        Finding finding =
                judged(5568, cubicInches, "").finding("us.trailer-reservoir-volume.fmvss-121");

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(Judged.section(finding)).isEqualTo(where);
    }

    @Source(
            work = "49 CFR 571.121, air brake systems",
            edition = "as amended 87 FR 34808 (8 June 2022)",
            where = "S5.1.1",
            kind = Kind.REGULATION,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{0} in3, {1} s: {3}")
    @CsvSource({
        // 7424 x 25 / 5568 = 33.33 s
        "7424, 33.3, 33.3 s, MET, S5.1.1",
        "7424, 33.4, 33.3 s, NOT_MET, S5.1.1",
        // at the required volume itself 25 s
        "5568, 25, 25 s, MET, S5.1.1",
        "5568, 25.1, 25 s, NOT_MET, S5.1.1",
        // 45 s belongs to 1.8 times the required volume: 10,022.4 in3
        "10022.4, 45, 45 s, MET, S5.1.1",
        "10022.4, 45.1, 45 s, NOT_MET, S5.1.1"
    })
    void time_from_85_to_100_psi_grows_with_the_reservoirs(
            double cubicInches, String seconds, String limit, Status expected, String where) {
        String evidence =
                """
                readings:
                  build-up: { from: 85 psi, to: 100 psi, time: %s s }
                """
                        .formatted(seconds);
        Finding finding = judged(cubicInches, 2848, evidence).ifApplied("us.build-up.fmvss-121");

        assertThat(finding.status()).isEqualTo(expected);
        assertThat(finding.why().reason()).contains("Measured " + seconds + " s", "here " + limit);
        assertThat(Judged.section(finding)).isEqualTo(where);
    }

    /**
     * The combination with the given reservoirs.
     *
     * @param tractor volume of the tractor's supply, primary and secondary reservoirs together
     *     (in3)
     * @param trailer volume of the trailer's service reservoir (in3)
     */
    private static Judged judged(double tractor, double trailer, String evidence) {
        double supply = tractor - 3712;
        String vehicle =
                """
                name: Yard tractor with trailer
                use: property
                units:
                  - kind: tractor
                    id: T2
                    built: 2019-04-09
                    reservoirs:
                      - { role: supply, volume: %s in3 }
                      - { role: primary, volume: 1856 in3 }
                      - { role: secondary, volume: 1856 in3 }
                    axles:
                      - { position: steer, brake: drum, chamber: clamp 20, spring-brake: no }
                      - { position: drive, brake: drum, chamber: clamp 30, spring-brake: yes }
                      - { position: drive, brake: drum, chamber: clamp 30, spring-brake: yes }
                  - kind: trailer
                    id: S1
                    built: 2019-04-09
                    reservoirs:
                      - { role: trailer, volume: %s in3 }
                    axles:
                      - { brake: drum, chamber: clamp 30, spring-brake: yes }
                      - { brake: drum, chamber: clamp 30, spring-brake: yes }
                """
                        .formatted(supply, trailer);
        return Judged.inspection("US", TODAY, vehicle, evidence);
    }
}
