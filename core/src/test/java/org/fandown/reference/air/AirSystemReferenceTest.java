package org.fandown.reference.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fandown.air.AirControls;
import org.fandown.air.AirControls.Coupling;
import org.fandown.air.AirControls.Knob;
import org.fandown.air.AirDefault;
import org.fandown.air.AirNode;
import org.fandown.air.AirSetup;
import org.fandown.air.AirSetup.Spring;
import org.fandown.air.AirSystem;
import org.fandown.air.AirVehicles;
import org.fandown.air.InCab;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.units.Length;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleUnit;
import org.fandown.vehicle.WheelId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A sound vehicle of the model meets what new and used vehicles must meet. */
class AirSystemReferenceTest {
    private static final String CFR = "49 CFR 571.121 (FMVSS 121)";
    private static final String EDITION = "as amended to 78 FR 21853 (2013)";
    private static final String READ = "2026-11-25";

    /** Valves and short lines of 0.1 in3 fill besides the chambers of the worked case, psi. */
    private static final double LINES_BESIDE_CHAMBERS = 0.02;

    /** Free strokes are given, and nothing yields; conversions are rounded. */
    private static final double SAME_STROKE = 1e-9;

    /** Rounding of a mass and a pressure, in3. */
    private static final double EXACT_VOLUME = 1e-6;

    private static final InCab COMBINATION =
            new InCab(AirVehicles.tractorTrailer(), AirSetup.SOUND);

    @Source(
            work = CFR,
            edition = EDITION,
            where = "S5.3.3.1(a)",
            kind = Kind.REGULATION,
            accessed = READ)
    @ParameterizedTest(name = "{0} within {1} s: {2}")
    @CsvSource({
        "1L.service, 0.45, S5.3.3.1(a) truck",
        "3R.service, 0.45, S5.3.3.1(a) truck",
        "4L.service, 0.60, S5.3.3.1(a) trailer",
        "5R.service, 0.60, S5.3.3.1(a) trailer"
    })
    void each_chamber_has_60_psi_in_time_from_100_psi(String chamber, double limit, String where) {
        AirSystem system = COMBINATION.chargedForTiming(100);
        system.control(system.controls().withFoot(1));

        assertThat(InCab.seconds(system, chamber, 60, true)).as(where).isBetween(0.05, limit);
    }

    @Source(
            work = CFR,
            edition = EDITION,
            where = "S5.3.3.1(b)",
            kind = Kind.REGULATION,
            accessed = READ)
    @Test
    void a_test_reservoir_of_50_in3_at_the_coupling_has_60_psi_within_0_35_s() {
        double line = AirDefault.TRACTOR_LINE.number();
        AirSetup rig = AirSetup.SOUND.with(AirDefault.TRACTOR_LINE, line + 50);
        AirSystem system = new InCab(AirVehicles.tractor(), rig).chargedForTiming(100);
        system.control(system.controls().withFoot(1));

        assertThat(InCab.seconds(system, "control-line-1", 60, true)).isBetween(0.05, 0.35);
    }

    @Source(
            work = CFR,
            edition = EDITION,
            where = "S5.3.4.1(b)",
            kind = Kind.REGULATION,
            accessed = READ)
    @Test
    void a_test_reservoir_of_50_in3_at_the_coupling_is_down_to_5_psi_within_0_75_s() {
        double line = AirDefault.TRACTOR_LINE.number();
        AirSetup rig = AirSetup.SOUND.with(AirDefault.TRACTOR_LINE, line + 50);
        AirSystem system = applied(new InCab(AirVehicles.tractor(), rig));

        assertThat(InCab.seconds(system, "control-line-1", 5, false)).isBetween(0.05, 0.75);
    }

    @Source(
            work = CFR,
            edition = EDITION,
            where = "S5.3.3.1(b) and S5.3.4.1(b), row by row",
            kind = Kind.REGULATION,
            accessed = READ,
            note = "timed from the pedal of a tractor, which is stricter than the rig")
    @ParameterizedTest(name = "{3}")
    @CsvSource({
        "1, 0.50, 1.00, 'S5.3.3.1(b), S5.3.4.1(b): trailer that tows'",
        "2, 0.55, 1.10, 'S5.3.3.1(b), S5.3.4.1(b): converter dolly'"
    })
    void a_test_reservoir_behind_a_towed_unit_fills_and_empties_in_time(
            int unit, double apply, double release, String where) {
        Vehicle doubles = AirVehicles.doubles();
        List<VehicleUnit> pair = List.of(doubles.powerUnit(), doubles.units().get(unit));
        double line = AirDefault.CONTROL_LINE.number();
        InCab rig =
                new InCab(
                        new Vehicle("Rig", doubles.use(), pair),
                        AirSetup.SOUND.with(AirDefault.CONTROL_LINE, line + 50));
        AirSystem system = rig.chargedForTiming(100);
        system.control(system.controls().withFoot(1));

        assertThat(InCab.seconds(system, "control-line-2", 60, true)).isBetween(0.05, apply);
        assertThat(InCab.seconds(applied(rig), "control-line-2", 5, false))
                .isBetween(0.05, release);
    }

    /** Returns a system just released from a full application at 95 psi or more. */
    private static AirSystem applied(InCab tests) {
        AirSystem system = tests.chargedForTiming(105);
        system.control(system.controls().withFoot(1));
        system.advance(3);
        system.control(system.controls().withFoot(0));
        return system;
    }

    @Source(
            work = CFR,
            edition = EDITION,
            where = "S5.3.4.1(a)",
            kind = Kind.REGULATION,
            accessed = READ)
    @ParameterizedTest(name = "{0} within {1} s: {2}")
    @CsvSource({
        "1L.service, 0.55, S5.3.4.1(a) truck",
        "3R.service, 0.55, S5.3.4.1(a) truck",
        "4L.service, 1.20, S5.3.4.1(a) trailer",
        "5R.service, 1.20, S5.3.4.1(a) trailer"
    })
    void each_chamber_is_down_to_5_psi_in_time_from_95_psi(
            String chamber, double limit, String where) {
        AirSystem system = COMBINATION.chargedForTiming(105);
        system.control(system.controls().withFoot(1));
        system.advance(3);
        assertThat(system.pressure(chamber).inPsi()).isGreaterThan(90);
        system.control(system.controls().withFoot(0));

        assertThat(InCab.seconds(system, chamber, 5, false)).as(where).isBetween(0.05, limit);
    }

    @Source(
            work = CFR,
            edition = EDITION,
            where = "S5.1.1",
            kind = Kind.REGULATION,
            accessed = READ,
            note = "25 s x actual / required volume; 5568 in3 is required and fitted")
    @Test
    void the_compressor_builds_up_from_85_to_100_psi_within_25_s_at_full_speed() {
        double seconds = new InCab(AirVehicles.tractor(), AirSetup.SOUND).buildUp(2000);

        assertThat(seconds).isBetween(3.0, 25.0);
    }

    @Source(
            work = "State driver manuals, air brake section",
            edition = "several, 2010s",
            where = "build-up from 85 to 100 psi within 45 s at operating rpm",
            kind = Kind.HANDBOOK,
            accessed = READ)
    @Test
    void a_combination_builds_up_from_85_to_100_psi_within_45_s_at_operating_speed() {
        assertThat(COMBINATION.buildUp(1300)).isBetween(10.0, 45.0);
    }

    @Source(
            work = "Ontario driver handbook, air brakes",
            edition = "as read",
            where = "build-up from 85 to 100 psi within 2 min at 600 to 900 rpm",
            kind = Kind.HANDBOOK,
            accessed = READ)
    @ParameterizedTest(name = "{0} rpm: {1}")
    @CsvSource({"600, lower end", "900, upper end"})
    void a_combination_builds_up_within_2_min_at_idle(double rpm, String where) {
        assertThat(COMBINATION.buildUp(rpm)).as(where).isBetween(10.0, 120.0);
    }

    @Source(
            work = CFR,
            edition = EDITION,
            where = "S5.1.1.1: truck cut-in at least 100 psi",
            kind = Kind.REGULATION,
            accessed = READ)
    @Test
    void the_usual_governor_starts_pumping_at_100_psi_or_more() {
        assertThat(COMBINATION.cutIn()).isBetween(100.0, 110.0);
    }

    @Source(
            work = CFR,
            edition = EDITION,
            where = "S5.1.5: warning below 60 psi",
            kind = Kind.REGULATION,
            accessed = READ)
    @Test
    void lamp_and_buzzer_come_on_before_60_psi() {
        assertThat(COMBINATION.lowAirLamp()).isBetween(60.0, 75.0);
        assertThat(COMBINATION.lowAirBuzzer()).isBetween(60.0, 75.0);
    }

    @Source(
            work = CFR,
            edition = EDITION,
            where = "S5.1.7: stop lamps at 6 psi or less",
            kind = Kind.REGULATION,
            accessed = READ)
    @Test
    void the_stop_lamps_light_before_the_chambers_have_6_psi() {
        AirSystem system = COMBINATION.chargedForTiming(100);
        for (double foot = 0; foot < 0.3 && !system.stopLamps(); foot += 0.002) {
            system.control(system.controls().withFoot(foot));
            system.advance(0.05);
        }

        assertThat(system.stopLamps()).isTrue();
        assertThat(system.pressure("3L.service").inPsi()).isLessThanOrEqualTo(6);
    }

    @Source(
            work = "State driver manuals, air brake section",
            edition = "several, 2010s",
            where = "knobs pop out between 20 and 45 psi",
            kind = Kind.HANDBOOK,
            accessed = READ,
            note = "published second-hand")
    @Test
    void both_knobs_pop_out_between_20_and_45_psi() {
        assertThat(COMBINATION.trailerPop()).isBetween(20.0, 45.0);
        assertThat(COMBINATION.parkingPop()).isBetween(20.0, 45.0);
    }

    @Source(
            work = "49 CFR 393.50(a)",
            edition = "older wording, excerpt",
            where = "70 percent left after a full application with the engine stopped",
            kind = Kind.REGULATION,
            accessed = READ)
    @Test
    void a_full_application_leaves_more_than_70_percent() {
        AirSystem system = COMBINATION.charged(100);
        system.control(system.controls().withFoot(1));
        system.advance(2);

        assertThat(system.pressure("primary").inPsi()).isBetween(70.0, 99.0);
        assertThat(system.pressure("secondary").inPsi()).isBetween(70.0, 99.0);
    }

    @Source(
            work = CFR,
            edition = EDITION,
            where = "S5.6.3.2: parking brakes set within 3 s",
            kind = Kind.REGULATION,
            accessed = READ,
            note = "counted here as set when the spring chambers are below 5 psi")
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"2L.spring, tractor", "4L.spring, trailer"})
    void the_parking_brakes_are_set_within_3_s(String chamber, String where) {
        AirSystem system = COMBINATION.chargedForTiming(100);
        system.control(system.controls().withParking(Knob.PULLED));

        assertThat(InCab.seconds(system, chamber, 5, false)).as(where).isBetween(0.05, 3.0);
    }

    @Source(
            work = CFR,
            edition = EDITION,
            where = "S5.1.3: towing vehicle keeps its air",
            kind = Kind.REGULATION,
            accessed = READ,
            note =
                    "no pressure stated there; 20 psi is the least closing pressure of driver manuals")
    @Test
    void the_tractor_keeps_air_when_the_lines_part() {
        AirSystem system = COMBINATION.charged(100);
        system.control(AirControls.NONE.withCoupling(1, Coupling.OPEN));
        system.advance(120);

        assertThat(system.trailerKnobIn()).contains(false);
        assertThat(system.pressure("primary").inPsi()).isGreaterThan(20);
        assertThat(system.pressure("4L.spring").inPsi()).isLessThan(5);
    }

    @Source(
            work = "Boyle's law",
            edition =
                    "p = (reservoirs x p + rest x atmosphere) / (reservoirs + chambers), absolute",
            where = "5568 in3 at 110 psi, two type 20 and four type 30, strokes row by row",
            kind = Kind.CLOSED_FORM,
            accessed = READ)
    @ParameterizedTest(name = "{3}")
    @CsvSource({
        "1.25, 1.5, 103.72955, adjusted",
        "1.75, 2.0, 102.13781, at the limit",
        "2.25, 2.5, 100.58829, bottomed"
    })
    void one_full_application_takes_what_the_chambers_hold(
            double front, double rear, double expected, String where) {
        AirSystem system = new InCab(AirVehicles.tractor(), bare(front, rear)).charged(110);
        system.control(system.controls().withFoot(1));
        system.advance(300);

        double mean =
                (1368 * system.pressure("supply").inPsi()
                                + 2200 * system.pressure("primary").inPsi()
                                + 2000 * system.pressure("secondary").inPsi())
                        / 5568;
        assertThat(stroke(system, "1L")).isCloseTo(front, within(SAME_STROKE));
        assertThat(stroke(system, "2L")).isCloseTo(rear, within(SAME_STROKE));
        assertThat(mean).isCloseTo(expected, within(LINES_BESIDE_CHAMBERS));
    }

    /**
     * A tractor without leaks and with hardly any air in its lines, valves and spring chambers,
     * whose reservoirs are joined, and whose brakes have these strokes at any pressure.
     */
    private static AirSetup bare(double front, double rear) {
        AirSetup setup =
                AirSetup.SOUND
                        .with(AirDefault.SOUND_LEAK, 0)
                        .with(AirDefault.SHORT_LINE, 0.1)
                        .with(AirDefault.TRACTOR_LINE, 0.1)
                        .with(AirDefault.RELAY_CRACK, 0)
                        .with(AirDefault.POWER_STROKE, 0)
                        .with(AirDefault.SPRING_REST, 0.001)
                        .withBridge("supply", "primary", 100)
                        .withBridge("supply", "secondary", 100);
        for (String wheel : List.of("1L", "1R", "2L", "2R", "3L", "3R")) {
            Length free = Length.ofInches(wheel.startsWith("1") ? front : rear);
            setup = setup.withFreeStroke(WheelId.parse(wheel), free);
        }
        for (String wheel : List.of("2L", "2R", "3L", "3R")) {
            setup = setup.withSpring(WheelId.parse(wheel), Spring.CAGED);
        }
        return setup;
    }

    @Source(
            work = "Trailer reservoir rule worked out for four type 30 chambers",
            edition = "as printed in a manual for mechanics",
            where = "8 x 4 x 89 in3 = 2848 in3",
            kind = Kind.HANDBOOK,
            accessed = READ,
            note = "49 CFR 571.121 S5.2.1.1 gives the factor, its Table V the 89 in3")
    @Test
    void a_trailer_of_the_least_ratio_has_the_reservoir_of_the_worked_case() {
        AirSetup least = AirSetup.SOUND.with(AirDefault.TOWED_RATIO, 8);
        AirSystem system = new InCab(AirVehicles.tractorTrailer(), least).charged(0);
        AirNode reservoir = system.state().network().node("unit2.reservoir").orElseThrow();

        double cubicMetres =
                system.state().kilograms(reservoir) * 287.05 * 293.15 / AirFigures.ATMOSPHERE;
        assertThat(cubicMetres / 1.6387064e-5).isCloseTo(2848, within(EXACT_VOLUME));
    }

    private static double stroke(AirSystem system, String wheel) {
        return system.pushRod(WheelId.parse(wheel)).orElseThrow().inInches();
    }
}
