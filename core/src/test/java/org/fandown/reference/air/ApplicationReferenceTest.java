package org.fandown.reference.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.fandown.reference.air.AirFigures.psi;

import java.util.ArrayList;
import java.util.List;
import org.fandown.air.AirLink;
import org.fandown.air.AirNetwork;
import org.fandown.air.AirNetworkBuilder;
import org.fandown.air.AirNode;
import org.fandown.air.AirState;
import org.fandown.air.AirStepper;
import org.fandown.air.Ambient;
import org.fandown.air.ChamberLaw;
import org.fandown.air.ChamberLaw.Corner;
import org.fandown.air.Restriction;
import org.fandown.reference.Source;
import org.fandown.reference.Source.Kind;
import org.fandown.units.Length;
import org.fandown.units.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a full application takes from a reservoir, by Boyle's law. */
class ApplicationReferenceTest {
    /** The expected values are printed to eight digits. */
    private static final double EIGHT_DIGITS_PERCENT = 1e-5;

    private static final Restriction HOSE = new Restriction(5e-8, 0.35);

    @Source(
            work = "Boyle's law",
            edition = "p = (reservoir x p + rest x atmosphere) / (reservoir + chambers), absolute",
            where = "5568 in3 at 110 psi, two type 20 and four type 30, strokes row by row",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{3}")
    @CsvSource({
        "1.25, 1.5, 103.72955, adjusted",
        "1.75, 2.0, 102.13781, at the limit",
        "2.25, 2.5, 100.58829, bottomed"
    })
    void a_full_application_lowers_the_reservoir_by_the_volume_of_the_chambers(
            double stroke20, double stroke30, double expected, String where) {
        Circuit circuit = new Circuit(Volume.ofCubicInches(5568), 110);
        circuit.add(2, law(9, 20, stroke20));
        circuit.add(4, law(14, 30, stroke30));
        circuit.start();

        circuit.apply();

        assertThat(circuit.gaugePsi()).isCloseTo(expected, withinPercentage(EIGHT_DIGITS_PERCENT));
    }

    @Source(
            work = "Boyle's law on the least reservoir volumes of FMVSS 121",
            edition = "12 times and 8 times the volume of the chambers, no volume at rest",
            where = "from 100 psi, row by row",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @ParameterizedTest(name = "{2}")
    @CsvSource({"12, 91.17723469, truck or bus", "8, 87.25600567, trailer"})
    void the_least_reservoirs_lose_a_known_share(double times, double expected, String where) {
        Circuit circuit = ideal(times);

        circuit.apply();

        assertThat(circuit.gaugePsi()).isCloseTo(expected, withinPercentage(EIGHT_DIGITS_PERCENT));
    }

    @Source(
            work = "Boyle's law on the least reservoir volume of FMVSS 121",
            edition = "12 times the volume of the chambers, no volume at rest",
            where = "six full applications from 100 psi without the compressor",
            kind = Kind.CLOSED_FORM,
            accessed = "2026-11-25")
    @Test
    void six_applications_fan_the_pressure_down_to_below_sixty() {
        Circuit circuit = ideal(12);
        List<Double> found = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            circuit.apply();
            found.add(circuit.gaugePsi());
            circuit.release();
        }

        double[] expected = {91.177, 83.033, 75.516, 68.576, 62.171, 56.2578154};
        for (int i = 0; i < expected.length; i++) {
            double percent = i < 5 ? 1e-3 : EIGHT_DIGITS_PERCENT;
            assertThat(found.get(i)).isCloseTo(expected[i], withinPercentage(percent));
        }
    }

    /** A chamber of 100 in3 that holds next to nothing at rest. */
    private static Circuit ideal(double times) {
        Circuit circuit = new Circuit(Volume.ofCubicInches(times * 100), 100);
        circuit.add(1, law(1e-7, 40, 2.5));
        circuit.start();
        return circuit;
    }

    private static ChamberLaw law(double rest, double area, double inches) {
        Corner start = new Corner(psi(5), Length.ofInches(0));
        Corner end = new Corner(psi(8), Length.ofInches(inches));
        return new ChamberLaw(Volume.ofCubicInches(rest), area, List.of(start, end));
    }

    /** A reservoir with chambers that are filled from it and emptied to the atmosphere. */
    private static final class Circuit {
        private final AirNetworkBuilder builder = AirNetwork.builder(Ambient.STANDARD);
        private final List<AirLink> inlets = new ArrayList<>();
        private final List<AirLink> exhausts = new ArrayList<>();
        private final AirNode reservoir;
        private final double from;
        private AirState state;
        private AirStepper stepper;

        private Circuit(Volume volume, double from) {
            reservoir = builder.addRigid("reservoir", volume);
            this.from = from;
        }

        private void add(int count, ChamberLaw law) {
            for (int i = 0; i < count; i++) {
                String name = law.areaSquareInches() + " number " + i;
                AirNode chamber = builder.addChamber(name, law);
                inlets.add(builder.orifice(name + " in", reservoir, chamber, HOSE));
                exhausts.add(builder.orifice(name + " out", chamber, builder.atmosphere(), HOSE));
            }
        }

        private void start() {
            AirNetwork network = builder.build();
            state = network.stateAtRest();
            stepper = new AirStepper(network);
            state.setPressure(reservoir, AirFigures.psi(from));
        }

        private void apply() {
            move(1, 0);
        }

        private void release() {
            move(0, 1);
        }

        private void move(double in, double out) {
            inlets.forEach(link -> state.setOpening(link, in));
            exhausts.forEach(link -> state.setOpening(link, out));
            for (int i = 0; i < 2000; i++) {
                stepper.step(state, 0.01);
            }
        }

        private double gaugePsi() {
            return state.gauge(reservoir).inPsi();
        }
    }
}
