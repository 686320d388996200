package org.fandown.braking;

import org.fandown.units.Decimals;
import org.fandown.vehicle.Basis;

/**
 * Something the estimate takes for granted, with the value it reckons with.
 *
 * <p>Each result carries those it used, so that they can be printed beside it. The number printed
 * is the number used: the calculation reads it from here. {@link Basis#ASSUMED} marks what was
 * chosen here so that a model can run at all.
 */
public enum Assumption {
    /** Pressure at which the stroke was measured, where the reading does not say. */
    MEASURED_AT(
            "pressure at which the strokes were measured",
            95,
            "psi",
            Basis.PUBLISHED,
            "middle of the 90 to 100 psi of published inspection procedures"),
    /** Pressure of the application that is estimated, where none is asked for. */
    APPLIED_AT(
            "pressure of the brake application",
            95,
            "psi",
            Basis.ASSUMED,
            "the pressure at which strokes are measured"),
    /** Least pressure that moves a push rod. */
    PUSH_OUT_PRESSURE(
            "chamber pressure that overcomes the return spring",
            5,
            "psi",
            Basis.ASSUMED,
            "literature from memory: 3 to 8 psi"),
    /** Pressure at which the linings touch. */
    CONTACT_PRESSURE("chamber pressure at which the linings touch", 8, "psi", Basis.ASSUMED, ""),
    /** Stroke gained for each psi once the linings touch, for a chamber of 30 square inches. */
    POWER_STROKE(
            "stroke for each psi after the linings touch, 30 in2 chamber",
            0.0105,
            "in/psi",
            Basis.ASSUMED,
            "fitted to a trade article: free 0.66 in and power stroke 1.15 in of a 2.00 in limit"),
    /** The same for other chambers. */
    POWER_STROKE_BY_AREA(
            "that stroke is in proportion to the chamber's area", Basis.ASSUMED, "equal stiffness"),
    /** Free stroke of a brake in full adjustment. */
    ADJUSTED_FREE_STROKE(
            "free stroke of a fully adjusted brake",
            0.5,
            "in",
            Basis.PUBLISHED_SECONDHAND,
            "a component maker in the trade press: 3/8 to 5/8 in"),
    /** Part of the expected yield below which a stroke is not believed. */
    SHORT_STROKE(
            "a brake whose stroke is below this part of the expected yield may not move at all",
            0.5,
            "",
            Basis.ASSUMED,
            ""),
    /** Part of the full stroke up to which force does not fall. */
    FORCE_KNEE("force is full up to this part of the full stroke", 0.7, "", Basis.ASSUMED, ""),
    /** Part of the force lost just before the end of the stroke. */
    FORCE_LOSS(
            "part of the force lost just before the end of the stroke, falling as a parabola",
            0.5,
            "",
            Basis.ASSUMED,
            "no measured force against stroke was found"),
    /** At the end of the stroke the chamber's wall takes the force. */
    NO_FORCE_AT_END(
            "no force reaches the brake when the stroke is used up",
            Basis.PUBLISHED_SECONDHAND,
            "inspection alliance page and trade article"),
    /** Full stroke of chambers whose full stroke is only remembered. */
    FULL_STROKE_REMEMBERED(
            "full stroke of a chamber type is taken from memory of the literature",
            Basis.FROM_MEMORY,
            "maintenance literature, not read"),
    /** Full stroke of chambers that no table gives a full stroke for. */
    FULL_STROKE_FROM_LIMIT(
            "full stroke not tabled: its readjustment limit divided by",
            0.8,
            "",
            Basis.DERIVED,
            "49 CFR 393.47(e): limits by type, and 80 % of the rated stroke for unlisted types"),
    /** Area of bolt-type chambers. */
    AREA_REMEMBERED(
            "area of a bolt-type chamber is taken from memory of the literature",
            Basis.FROM_MEMORY,
            "maintenance literature, not read"),
    /** Effective length of a slack adjuster that was not measured. */
    ARM("slack adjuster arm, where not given", 5.5, "in", Basis.FROM_MEMORY, "catalogue size"),
    /** Effective radius of the cam. */
    CAM_RADIUS(
            "effective radius of the cam",
            0.5,
            "in",
            Basis.PUBLISHED_SECONDHAND,
            "accident-reconstruction worksheet"),
    /** Mechanical efficiency of a cam brake. */
    CAM_EFFICIENCY(
            "mechanical efficiency of a cam brake",
            0.6,
            "",
            Basis.PUBLISHED_SECONDHAND,
            "accident-reconstruction worksheet"),
    /** Friction of the lining. */
    LINING_FRICTION(
            "friction of the lining", 0.35, "", Basis.FROM_MEMORY, "low end of 0.35 to 0.45"),
    /** Drum radius of an axle that does not steer, where not given. */
    DRUM_RADIUS("drum radius, where not given", 8.25, "in", Basis.FROM_MEMORY, "16.5 in drum"),
    /** Drum radius of a steering axle, where not given. */
    STEER_DRUM_RADIUS(
            "drum radius of a steering axle, where not given",
            7.5,
            "in",
            Basis.FROM_MEMORY,
            "15 in drum"),
    /** Rolling radius of a tyre, where not given. */
    TYRE_RADIUS(
            "rolling radius of the tyre, where not given",
            19.5,
            "in",
            Basis.FROM_MEMORY,
            "low end of 19.5 to 20.5 in"),
    /** Force ratio of an air disc brake. */
    DISC_LEVER("lever ratio of an air disc brake", 15.5, "", Basis.FROM_MEMORY, "literature"),
    /** Effective radius of a disc. */
    DISC_RADIUS("effective radius of a brake disc", 6.8, "in", Basis.ASSUMED, ""),
    /** A wedge brake is reckoned as a cam brake. */
    WEDGE_AS_CAM("a wedge brake is reckoned as a cam brake with the arm above", Basis.ASSUMED, ""),
    /** Stroke gained by drums that grow with heat. */
    DRUM_GROWTH(
            "stroke gained for each degree a drum is hotter than 70 F",
            0.625 / 530,
            "in/F",
            Basis.PUBLISHED_SECONDHAND,
            "trade press report: 1.5 in at 70 F, 2.125 in at 600 F, 85 psi"),
    /** Temperature at which strokes are measured. */
    COLD_DRUM("drum temperature when the strokes were measured", 70, "F", Basis.ASSUMED, ""),
    /** Discs do not gain stroke. */
    NO_DISC_GROWTH(
            "hot disc brakes gain no stroke", Basis.FROM_MEMORY, "literature: little growth"),
    /** Heat does not lower friction. */
    NO_FADE(
            "friction is taken as unchanged by heat; a real loss comes on top",
            Basis.ASSUMED,
            "literature from memory: 20 to 40 % less at 600 F"),
    /** Stroke gained while the wheel turns, besides that in proportion to the stopping time. */
    ROLLING_STROKE(
            "stroke gained in a rolling stop",
            0.05,
            "in",
            Basis.PUBLISHED_SECONDHAND,
            "published stroke increments at 30 to 60 mph"),
    /** Stroke gained for each second of a rolling stop. */
    ROLLING_STROKE_RATE(
            "stroke gained for each second of a rolling stop",
            0.034,
            "in/s",
            Basis.PUBLISHED_SECONDHAND,
            "published stroke increments at 30 to 60 mph"),
    /** Force of the spring of a spring brake before it travels. */
    SPRING_FORCE(
            "spring brake force at no stroke, 30 in2 chamber",
            1950,
            "lbf",
            Basis.ASSUMED,
            "provincial driver manual: 1500 to 2000 lbf"),
    /** Loss of spring force with travel. */
    SPRING_RATE("spring brake force lost with stroke", 200, "lbf/in", Basis.ASSUMED, ""),
    /** Springs of other chambers. */
    SPRING_BY_AREA("spring force is in proportion to the chamber's area", Basis.ASSUMED, ""),
    /** Friction between tyre and road. */
    ROAD_FRICTION("friction of tyre on road, at most", 0.7, "", Basis.ASSUMED, "hard, dry road"),
    /** Time before the brakes begin to act. */
    DEAD_TIME("time before the brakes begin to act", 0.1, "s", Basis.ASSUMED, ""),
    /** Time in which brake force rises. */
    RISE_TIME("time in which the brake force rises evenly", 0.4, "s", Basis.ASSUMED, ""),
    /** Weight from axle ratings. */
    WEIGHT_FROM_AXLE_RATINGS(
            "axle loads not given: each axle carries its gross rating", Basis.ASSUMED, ""),
    /** Weight from the rating of a single vehicle. */
    WEIGHT_FROM_GROSS_RATING(
            "axle loads not given: the vehicle is at its gross rating", Basis.ASSUMED, ""),
    /** Weight from the units' ratings. */
    WEIGHT_FROM_UNIT_RATINGS(
            "axle loads not given: the weight is the sum of the units' gross ratings, which counts"
                    + " the load on a fifth wheel twice",
            Basis.ASSUMED,
            "errs towards a longer stop"),
    /** Wheels without a reading. */
    UNREAD_WHEELS(
            "a wheel without a stroke reading is fully adjusted at best and gives no force at worst",
            Basis.ASSUMED,
            "");

    private final String label;
    private final double number;
    private final String unit;
    private final boolean numeric;
    private final Basis basis;
    private final String source;

    Assumption(String label, double number, String unit, Basis basis, String source) {
        this.label = label;
        this.number = number;
        this.unit = unit;
        this.numeric = true;
        this.basis = basis;
        this.source = source;
    }

    Assumption(String label, Basis basis, String source) {
        this.label = label;
        this.number = 0;
        this.unit = "";
        this.numeric = false;
        this.basis = basis;
        this.source = source;
    }

    /** Returns what is taken for granted, in words. */
    public String label() {
        return label;
    }

    /** Returns the number with its unit, empty text if the assumption has no number. */
    public String value() {
        if (!numeric) {
            return "";
        }
        String text = Decimals.formatShort(number, 6);
        return unit.isEmpty() ? text : text + " " + unit;
    }

    /** Returns how well it is founded. */
    public Basis basis() {
        return basis;
    }

    /** Returns what it rests on, empty text if on nothing but our choice. */
    public String source() {
        return source;
    }

    double number() {
        if (!numeric) {
            throw new IllegalStateException(name() + " has no number.");
        }
        return number;
    }
}
