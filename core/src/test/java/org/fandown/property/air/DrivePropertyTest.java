package org.fandown.property.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.fandown.air.AirNode;
import org.fandown.air.AirState;
import org.fandown.air.AirSystem;

/** Whole vehicles drawn by lot, sound or not, to which a person does anything. */
class DrivePropertyTest {
    /** Rounding of some hundred thousand additions, part of the air there is. */
    private static final double ROUNDING = 1e-12;

    /** The safety valve opens at 150 psi, and air trapped cold can warm after that. */
    private static final double MOST_PSI = 165;

    /** What a compressor with a clearance of 0.05 gives no flow at: 21 to the power 1.3, psi. */
    private static final double CLEARANCE_PSI = 754;

    /** Air of a reservoir that empties cools, and warm air of one that is empty sinks lower. */
    private static final double LEAST_PSI = -2;

    @Property(tries = 10_000)
    void no_air_is_lost_and_no_pressure_is_impossible(@ForAll long seed) {
        RandomDrive drive = new RandomDrive(seed);
        AirSystem system = drive.system();
        double before = system.kilogramsInAll();
        int acts = drive.acts();
        for (int i = 0; i < acts; i++) {
            system.control(drive.act());
            system.advance(drive.seconds());
            requirePossible(system, drive);
        }

        assertThat(system.kilogramsInAll() - system.kilogramsPumped())
                .as("air of %s", drive)
                .isCloseTo(before, within(before * ROUNDING));
    }

    @Property(tries = 300)
    void the_same_acts_give_the_same_bits(@ForAll long seed) {
        assertThat(fingerprint(seed)).isEqualTo(fingerprint(seed));
    }

    private static long fingerprint(long seed) {
        RandomDrive drive = new RandomDrive(seed);
        AirSystem system = drive.system();
        int acts = drive.acts();
        for (int i = 0; i < acts; i++) {
            system.control(drive.act());
            system.advance(drive.seconds());
        }
        return system.state().fingerprint();
    }

    private static void requirePossible(AirSystem system, RandomDrive drive) {
        AirState state = system.state();
        for (AirNode node : state.network().nodes()) {
            double psi = state.gauge(node).inPsi();
            boolean ahead = node.name().equals("discharge") || node.name().equals("purge");
            double most = ahead ? CLEARANCE_PSI : MOST_PSI;
            if (!(psi >= LEAST_PSI && psi <= most)) {
                assertThat(psi).as("%s of %s", node.name(), drive).isBetween(LEAST_PSI, most);
            }
            if (node.index() > 0) {
                assertThat(state.kilograms(node)).isPositive();
            }
        }
    }
}
