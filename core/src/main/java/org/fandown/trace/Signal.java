package org.fandown.trace;

import java.util.Optional;
import org.fandown.units.Unit;
import org.jspecify.annotations.Nullable;

/**
 * A signal of SAE J1939 that says something about air, brakes or what the vehicle does meanwhile.
 *
 * <p>Value = raw x resolution + offset. Of eight bits 0 to 250 are values, of sixteen those whose
 * high byte is 0 to 250, of two 0 and 1; the others say that there is no value, and why.
 *
 * <p><b>Source.</b> Open restatements of the standard (a DBC file, a header and message libraries),
 * checked against recordings of real trucks; the standard itself was not read. Pressures count as
 * gauge pressures, which the standard does not state in any text read: they are 0 when empty, and
 * agreed with the gauges of a tractor.
 */
public enum Signal {
    /** Pressure of the supply circuit. */
    SUPPLY(46, Group.AIR1, Place.octet(1), 8, 1, 0, Unit.KPA),
    /** Pressure of the parking and trailer circuit. */
    PARKING(1086, Group.AIR1, Place.octet(2), 8, 1, 0, Unit.KPA),
    /** Pressure of service circuit 1. */
    CIRCUIT_1(1087, Group.AIR1, Place.octet(3), 8, 1, 0, Unit.KPA),
    /** Pressure of service circuit 2. */
    CIRCUIT_2(1088, Group.AIR1, Place.octet(4), 8, 1, 0, Unit.KPA),
    /** Pressure the service brakes are applied with. */
    APPLICATION(116, Group.BRAKES, Place.octet(1), 4, 1, 0, Unit.KPA),
    /** Pressure of the primary circuit; 1000 kPa is the most it can say. */
    PRIMARY(117, Group.BRAKES, Place.octet(2), 4, 1, 0, Unit.KPA),
    /** Pressure of the secondary circuit; 1000 kPa is the most it can say. */
    SECONDARY(118, Group.BRAKES, Place.octet(3), 4, 1, 0, Unit.KPA),
    /** Engine speed. */
    ENGINE_SPEED(190, Group.EEC1, Place.word(4), 1, 8, 0, Unit.RPM),
    /** Speed by the wheels. */
    SPEED(84, Group.CCVS1, Place.word(2), 1, 256, 0, Unit.KMH),
    /** Parking brake switch, 1 when set. */
    PARKING_SWITCH(70, Group.CCVS1, Place.bits(1, 3), 1, 1, 0, null),
    /** Brake switch, 1 while the pedal is down. */
    BRAKE_SWITCH(597, Group.CCVS1, Place.bits(4, 5), 1, 1, 0, null),
    /** Travel of the brake pedal. */
    PEDAL(521, Group.EBC1, Place.octet(2), 2, 5, 0, Unit.PERCENT),
    /** Pressure of the air around. */
    BAROMETER(108, Group.AMBIENT, Place.octet(1), 1, 2, 0, Unit.KPA_ABS),
    /** Temperature of the air around. */
    AIR_TEMPERATURE(171, Group.AMBIENT, Place.word(4), 1, 32, -273, Unit.CELSIUS);

    /** Parameter groups. */
    static final class Group {
        static final int EBC1 = 61441;
        static final int EEC1 = 61444;
        static final int AIR1 = 65198;
        static final int CCVS1 = 65265;
        static final int AMBIENT = 65269;
        static final int BRAKES = 65274;

        private Group() {}
    }

    /**
     * Where a signal stands in its message.
     *
     * @param shift bits before it
     * @param bits bits of it: 2, 8 or 16
     */
    private record Place(int shift, int bits) {
        static Place octet(int number) {
            return new Place(8 * (number - 1), 8);
        }

        static Place word(int number) {
            return new Place(8 * (number - 1), 16);
        }

        /** Two bits; bit 1 is the lowest of its byte. */
        static Place bits(int number, int bit) {
            return new Place(8 * (number - 1) + bit - 1, 2);
        }
    }

    private final int number;
    private final int group;
    private final int shift;
    private final int bits;
    private final double numerator;
    private final double denominator;
    private final double offset;
    private final Optional<Unit> unit;

    Signal(
            int number,
            int group,
            Place place,
            double numerator,
            double denominator,
            double offset,
            @Nullable Unit unit) {
        this.number = number;
        this.group = group;
        shift = place.shift();
        bits = place.bits();
        this.numerator = numerator;
        this.denominator = denominator;
        this.offset = offset;
        this.unit = Optional.ofNullable(unit);
    }

    /** Returns its suspect parameter number (SPN). */
    public int number() {
        return number;
    }

    /** Returns the parameter group (PGN) it comes with. */
    public int group() {
        return group;
    }

    /** Returns the unit of its values, empty for a switch. */
    public Optional<Unit> unit() {
        return unit;
    }

    /** Bits before it in its message. */
    int shift() {
        return shift;
    }

    /** Bits of it: 2, 8 or 16. */
    int bits() {
        return bits;
    }

    int bytesNeeded() {
        return (shift + bits + 7) / 8;
    }

    double scaled(int raw) {
        return raw * numerator / denominator + offset;
    }
}
