package org.fandown.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.fandown.air.ChamberLaw.Corner;
import org.fandown.units.AbsolutePressure;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.units.Volume;
import org.junit.jupiter.api.Test;

class ChamberLawTest {
    private static final double ROUNDING = 1e-9;

    @Test
    void a_brake_too_slack_to_touch_bottoms_on_its_free_stroke() {
        ChamberLaw law = service(4, 0.0105);

        assertThat(law.strokeAt(psi(6)).inInches()).isEqualTo(4.0 / 3, within(ROUNDING));
        assertThat(law.strokeAt(psi(8)).inInches()).isEqualTo(2.5, within(ROUNDING));
        assertThat(law.strokeAt(psi(100)).inInches()).isEqualTo(2.5, within(ROUNDING));
    }

    @Test
    void a_brake_that_does_not_yield_stops_at_its_free_stroke() {
        ChamberLaw law = service(0.5, 0);

        assertThat(law.strokeAt(psi(100)).inInches()).isEqualTo(0.5, within(ROUNDING));
    }

    @Test
    void a_brake_without_free_stroke_moves_from_the_contact_pressure_on() {
        ChamberLaw law = service(0, 0.01);

        assertThat(law.strokeAt(psi(8)).inInches()).isZero();
        assertThat(law.strokeAt(psi(58)).inInches()).isEqualTo(0.5, within(ROUNDING));
    }

    @Test
    void an_empty_chamber_has_no_pressure() {
        assertThat(service(0.5, 0.01).pressureOf(0, AbsolutePressure.STANDARD_ATMOSPHERE).pascals())
                .isEqualTo(-101_325);
    }

    @Test
    void impossible_laws_are_refused() {
        Volume rest = Volume.ofCubicInches(14);
        Corner start = new Corner(psi(5), new Length(0));
        Corner end = new Corner(psi(8), Length.ofInches(1));

        refused(() -> new ChamberLaw(new Volume(0), 30, List.of(start, end)), "volume above 0");
        refused(() -> new ChamberLaw(rest, 0, List.of(start, end)), "area");
        refused(() -> new ChamberLaw(rest, 30, List.of(start)), "two or three");
        refused(() -> new ChamberLaw(rest, 30, List.of(end, start)), "first corner");
        refused(() -> new ChamberLaw(rest, 30, List.of(start, start)), "rising");
        refused(() -> stroke(0.5, 2), "0.001 to 1");
        refused(() -> stroke(0.5, 0.0001), "0.001 to 1");
        refused(
                () -> new PushRodStroke(psi(8), psi(5), new Length(0), 0.01, Length.ofInches(2.5)),
                "above the threshold");
        refused(() -> new Restriction(0, 0.3), "gate");
        refused(() -> new Restriction(1e-8, 1), "0.95");
        refused(() -> new LappingValve(way(), way(), psi(0), psi(0)), "band");
    }

    private static Restriction way() {
        return new Restriction(1e-8, 0.3);
    }

    private static ChamberLaw service(double free, double perPsi) {
        return ChamberLaw.service(Volume.ofCubicInches(14), 30, stroke(free, perPsi));
    }

    private static PushRodStroke stroke(double free, double perPsi) {
        return new PushRodStroke(
                psi(5), psi(8), Length.ofInches(free), perPsi, Length.ofInches(2.5));
    }

    private static GaugePressure psi(double psi) {
        return GaugePressure.ofPsi(psi);
    }

    private static void refused(ThrowingCallable call, String part) {
        assertThatThrownBy(call)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(part);
    }
}
