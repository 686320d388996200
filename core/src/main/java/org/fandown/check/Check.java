package org.fandown.check;

import java.util.Optional;
import org.fandown.units.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * One thing to establish about a vehicle, its brakes or its papers. The text form is lower case
 * with hyphens ({@code governor-cut-out}); it is what rule packs and inspection files write.
 */
public enum Check {
    GOVERNOR_CUT_OUT(CheckKind.VALUE, Dimension.GAUGE_PRESSURE, true, "Governor cut-out"),
    GOVERNOR_CUT_IN(CheckKind.VALUE, Dimension.GAUGE_PRESSURE, true, "Governor cut-in"),
    LOW_AIR_WARNING(CheckKind.VALUE, Dimension.GAUGE_PRESSURE, true, "Low-air warning comes on"),
    PARKING_VALVE_CLOSING(
            CheckKind.VALUE,
            Dimension.GAUGE_PRESSURE,
            true,
            "Parking-brake valve closes by itself"),
    TRAILER_SUPPLY_CLOSING(
            CheckKind.VALUE,
            Dimension.GAUGE_PRESSURE,
            true,
            "Trailer supply valve closes by itself"),
    TRACTOR_PROTECTION(
            CheckKind.VALUE, Dimension.GAUGE_PRESSURE, false, "Pressure kept when the lines part"),
    SPRING_BRAKE_START(
            CheckKind.VALUE, Dimension.GAUGE_PRESSURE, false, "Spring brakes begin to apply"),
    SAFETY_VALVE_OPENING(CheckKind.VALUE, Dimension.GAUGE_PRESSURE, false, "Safety valve opens"),
    STOP_LAMP_PRESSURE(CheckKind.VALUE, Dimension.GAUGE_PRESSURE, false, "Stop lamps light"),
    PRESSURE_BEFORE_DRIVING(
            CheckKind.VALUE,
            Dimension.GAUGE_PRESSURE,
            false,
            "Pressure in each circuit before driving"),
    COMPRESSOR_IDLE_PRESSURE(
            CheckKind.VALUE,
            Dimension.GAUGE_PRESSURE,
            false,
            "Pressure held at idle with brakes applied"),
    SECOND_RESERVOIR_OPENING(
            CheckKind.VALUE, Dimension.GAUGE_PRESSURE, false, "Second reservoir begins to fill"),
    PARKING_RELEASE_HOLD(
            CheckKind.VALUE,
            Dimension.GAUGE_PRESSURE,
            false,
            "Trailer parking brakes stay released"),
    COUPLING_HEAD_PRESSURE(
            CheckKind.VALUE, Dimension.GAUGE_PRESSURE, false, "Pressure at the coupling heads"),
    RESERVOIR_PROOF_PRESSURE(
            CheckKind.VALUE, Dimension.GAUGE_PRESSURE, false, "Reservoir proof pressure"),
    TRAILER_EMERGENCY_START(
            CheckKind.VALUE, Dimension.GAUGE_PRESSURE, false, "Trailer begins to brake by itself"),
    BUILD_UP_FROM_EMPTY(CheckKind.VALUE, Dimension.TIME, false, "Build-up from empty"),
    BUILD_UP_FROM_WARNING(
            CheckKind.VALUE, Dimension.TIME, false, "Build-up from warning off to maximum"),
    BUILD_UP_AFTER_APPLICATIONS(
            CheckKind.VALUE, Dimension.TIME, false, "Build-up after full applications"),
    APPLICATION_TIME(CheckKind.VALUE, Dimension.TIME, false, "Application time"),
    CONTROL_LINE_TIME(CheckKind.VALUE, Dimension.TIME, false, "Control-line application time"),
    RELEASE_TIME(CheckKind.VALUE, Dimension.TIME, false, "Release time"),
    CONTROL_LINE_RELEASE_TIME(CheckKind.VALUE, Dimension.TIME, false, "Control-line release time"),
    PARKING_SET_TIME(CheckKind.VALUE, Dimension.TIME, false, "Time for parking brakes to set"),
    BREAKAWAY_HOLD(CheckKind.VALUE, Dimension.TIME, false, "Trailer holds after a breakaway"),
    TEST_TIME_ALLOWED(CheckKind.VALUE, Dimension.TIME, false, "Time allowed for the test"),
    BUILD_UP(CheckKind.BUILD_UP, Dimension.TIME, true, "Build-up time"),
    AIR_LOSS_APPLIED(
            CheckKind.AIR_LOSS, Dimension.GAUGE_PRESSURE, true, "Air loss, brakes applied"),
    AIR_LOSS_RELEASED(
            CheckKind.AIR_LOSS, Dimension.GAUGE_PRESSURE, true, "Air loss, brakes released"),
    RESERVOIR_RESERVE(
            CheckKind.RESERVE, Dimension.GAUGE_PRESSURE, false, "Reserve after brake applications"),
    CONTROL_LINE_RESERVE(
            CheckKind.RESERVE,
            Dimension.GAUGE_PRESSURE,
            false,
            "Control-line pressure after full strokes"),
    RESERVE_APPLICATIONS(
            CheckKind.VALUE, Dimension.COUNT, false, "Applications left after the warning"),
    GAUGE_ERROR(CheckKind.VALUE, Dimension.RATIO, false, "Error of the pressure gauge"),
    CHAMBER_PRESSURE_SHARE(
            CheckKind.VALUE,
            Dimension.RATIO,
            false,
            "Share of reservoir pressure that reaches the chambers"),
    BRAKING_FORCE(CheckKind.VALUE, Dimension.RATIO, false, "Braking force, share of gross weight"),
    EMERGENCY_BRAKING_FORCE(
            CheckKind.VALUE, Dimension.RATIO, false, "Secondary braking force, share of weight"),
    PARKING_FORCE(CheckKind.VALUE, Dimension.RATIO, false, "Parking-brake force, share of weight"),
    PARKING_BRAKE_WHEEL_SHARE(
            CheckKind.VALUE, Dimension.RATIO, false, "Share of wheels the parking brake acts on"),
    PARKING_GRADE(CheckKind.VALUE, Dimension.RATIO, false, "Grade held by the parking brakes"),
    RETARDATION_FORCE(
            CheckKind.VALUE, Dimension.RATIO, false, "Retardation force, share of axle rating"),
    DEFECT_POINTS(CheckKind.VALUE, Dimension.RATIO, false, "Defect points"),
    CONTROL_SIGNAL_DROP(
            CheckKind.VALUE, Dimension.RATIO, false, "Control signal lost through a unit"),
    DECELERATION(CheckKind.VALUE, Dimension.ACCELERATION, false, "Deceleration"),
    EMERGENCY_DECELERATION(
            CheckKind.VALUE, Dimension.ACCELERATION, false, "Deceleration, secondary brake"),
    PARKING_DECELERATION(
            CheckKind.VALUE, Dimension.ACCELERATION, false, "Deceleration, parking brake"),
    STOPPING_DISTANCE(
            CheckKind.VALUE, Dimension.LENGTH, false, "Stopping distance, service brakes"),
    EMERGENCY_STOPPING_DISTANCE(
            CheckKind.VALUE, Dimension.LENGTH, false, "Stopping distance, emergency system"),
    PUSHROD_APPLIED_STROKE(
            CheckKind.WHEEL_VALUE, Dimension.LENGTH, true, "Push-rod applied stroke"),
    PUSHROD_FREE_STROKE(CheckKind.WHEEL_VALUE, Dimension.LENGTH, false, "Push-rod free stroke"),
    ADJUSTER_HAND_PLAY(
            CheckKind.WHEEL_VALUE, Dimension.LENGTH, false, "Slack-adjuster play by hand"),
    LINING_THICKNESS(CheckKind.WHEEL_VALUE, Dimension.LENGTH, false, "Lining thickness"),
    WEDGE_LINING_MOVEMENT(
            CheckKind.WHEEL_VALUE, Dimension.LENGTH, false, "Lining movement, wedge brake"),
    CAM_ANGLE(CheckKind.WHEEL_VALUE, Dimension.ANGLE, false, "Cam angle"),
    STROKE_INDICATOR_HIDDEN(CheckKind.WHEEL_YES_NO, null, false, "Stroke indicator hidden"),
    BRAKES_OVER_LIMIT(
            CheckKind.BRAKE_COUNT, Dimension.RATIO, false, "Share of brakes beyond their limit"),
    CHAMBER_MATCH(CheckKind.AXLE_MATCH, null, false, "Chambers alike across an axle"),
    ADJUSTER_ARM_MATCH(
            CheckKind.AXLE_MATCH, null, false, "Slack-adjuster arms alike across an axle"),
    RESERVOIR_VOLUME(
            CheckKind.DESIGN, Dimension.RATIO, false, "Reservoir volume, share of chamber volume"),
    TRAILER_RESERVOIR_VOLUME(
            CheckKind.DESIGN,
            Dimension.RATIO,
            false,
            "Trailer reservoir volume, share of chamber volume"),
    RESERVE_FOR_SECONDARY_BRAKING(
            CheckKind.YES_NO, null, false, "Secondary braking left after full strokes"),
    SPRING_BRAKE_FEED(CheckKind.YES_NO, null, false, "Spring brakes fed from a protected reserve"),
    LOW_AIR_WARNING_WORKS(CheckKind.YES_NO, null, false, "Low-air warning works"),
    GAUGE_WORKS(CheckKind.YES_NO, null, false, "Pressure gauge works"),
    NO_AUDIBLE_LEAK(CheckKind.YES_NO, null, false, "No air leak to be heard"),
    SERVICE_LINE_TIGHT(CheckKind.YES_NO, null, false, "No air lost from the service line"),
    SUPPLY_LINE_TIGHT(CheckKind.YES_NO, null, false, "No air lost from the supply line"),
    TRAILER_BRAKES_APPLY(CheckKind.YES_NO, null, false, "Trailer brakes apply by themselves"),
    TRAILER_BRAKES_RELEASE(
            CheckKind.YES_NO, null, false, "Trailer brakes release when air returns"),
    TRAILER_SPRING_BRAKES_APPLY(CheckKind.YES_NO, null, false, "Trailer spring brakes apply"),
    TRAILER_BRAKES_HOLD(CheckKind.YES_NO, null, false, "Trailer brakes hold against a gentle pull"),
    AIR_REACHES_TRAILERS(CheckKind.YES_NO, null, false, "Air reaches every trailer"),
    TRAILER_SERVICE_BRAKES(CheckKind.YES_NO, null, false, "Trailer service brakes respond"),
    PARKING_BRAKE_HOLD(CheckKind.YES_NO, null, true, "Parking brakes hold"),
    PARKING_BRAKE_RELEASE(
            CheckKind.YES_NO, null, false, "Wheels turn free when parking brakes are released"),
    SERVICE_BRAKE_RESPONSE(CheckKind.YES_NO, null, true, "Service brakes respond"),
    COUPLING_TUG(CheckKind.YES_NO, null, false, "Coupling holds against a pull"),
    CHECK_VALVE(CheckKind.YES_NO, null, false, "One-way check valve holds"),
    RESERVOIR_DRAIN(CheckKind.YES_NO, null, false, "Drain valve of each reservoir works"),
    RESERVOIRS_DRAINED(CheckKind.YES_NO, null, false, "Reservoirs drained"),
    EXHAUST_VALVES(CheckKind.YES_NO, null, false, "Quick-release and relay valves vent"),
    COMPRESSOR_DRIVE(CheckKind.YES_NO, null, false, "Compressor drive and mounting sound"),
    ABS_LAMP(CheckKind.YES_NO, null, false, "ABS lamp checks itself and goes out"),
    TRAILER_ABS_LAMP(CheckKind.YES_NO, null, false, "Trailer ABS lamp checks itself and goes out"),
    STOP_LAMPS(CheckKind.YES_NO, null, false, "Stop lamps work"),
    LINES_AND_HOSES(CheckKind.YES_NO, null, false, "Lines and hoses sound"),
    TRACTOR_PROTECTION_FITTED(
            CheckKind.YES_NO, null, false, "Tractor protection fitted and working"),
    VALVE_ORDER(
            CheckKind.YES_NO,
            null,
            false,
            "Trailer supply valve closes no later than the parking valve"),
    AUTOMATIC_ADJUSTERS_FITTED(CheckKind.YES_NO, null, false, "Automatic slack adjusters fitted"),
    ADJUSTMENT_INDICATOR_FITTED(CheckKind.YES_NO, null, false, "Adjustment indicator fitted"),
    ABS_FITTED(CheckKind.YES_NO, null, false, "ABS fitted"),
    GAUGE_FITTED(CheckKind.YES_NO, null, false, "Pressure gauge fitted"),
    WARNING_FITTED(CheckKind.YES_NO, null, false, "Low-air warning fitted"),
    BRAKES_ON_ALL_WHEELS(CheckKind.YES_NO, null, false, "Brakes act on all wheels"),
    PARKING_CONTROL(CheckKind.YES_NO, null, false, "Parking-brake control as required"),
    EMERGENCY_CONTROL(CheckKind.YES_NO, null, false, "Emergency control as required"),
    SERVICE_CONTROL(CheckKind.YES_NO, null, false, "One control applies all service brakes"),
    FRONT_LINE_PROTECTION(
            CheckKind.YES_NO, null, false, "Rear brakes work with a front line broken"),
    BRAKES_OPERABLE(CheckKind.YES_NO, null, false, "All fitted brakes work"),
    AIR_BOOST_RESPONSE(CheckKind.YES_NO, null, false, "Air boost moves the pedal"),
    ALCOHOL_EVAPORATOR(CheckKind.YES_NO, null, false, "Alcohol evaporator filled"),
    ADJUSTERS_CHECKED(CheckKind.YES_NO, null, false, "Adjusters checked by hand"),
    FRONT_LIMITING_VALVE_AUTOMATIC(
            CheckKind.YES_NO, null, false, "Front brake limiting valve is automatic"),
    WALK_ROUND(CheckKind.WALK_ROUND, null, true, "Walk-round inspection"),
    COMPONENT_CONDITION(CheckKind.COMPONENT, null, false, "Condition of a part"),
    REPORT_CONTENTS(CheckKind.REPORT, null, true, "Contents of the report"),
    INSPECTION_VALIDITY(CheckKind.DUTY, null, true, "How long an inspection is valid"),
    REPORT_RETENTION(CheckKind.DUTY, null, true, "How long a report is kept"),
    REPORT_SUBMISSION(CheckKind.DUTY, null, false, "Handing in the report"),
    WHO_REPORTS(CheckKind.DUTY, null, false, "Who has to report"),
    DEFECT_REPORTING(CheckKind.DUTY, null, false, "Reporting a defect"),
    MAJOR_DEFECT(CheckKind.DUTY, null, false, "What a major defect means"),
    MINOR_DEFECT(CheckKind.DUTY, null, false, "What a minor defect means"),
    DRIVER_REVIEW(CheckKind.DUTY, null, false, "Review by the next driver"),
    ELECTRONIC_RECORD(CheckKind.DUTY, null, false, "Electronic records"),
    SCHEDULE_CARRIED(CheckKind.DUTY, null, false, "Papers carried"),
    MAINTENANCE_PROGRAMME(CheckKind.DUTY, null, false, "Maintenance programme"),
    PERIODIC_INSPECTION(CheckKind.DUTY, null, false, "Periodic inspection"),
    INSPECTOR_QUALIFICATION(CheckKind.DUTY, null, false, "Who may inspect"),
    LICENCE_ENDORSEMENT(CheckKind.DUTY, null, false, "Licence endorsement"),
    TRAINING(CheckKind.DUTY, null, false, "Training"),
    SCOPE(CheckKind.DUTY, null, false, "Vehicles covered"),
    EXEMPTION(CheckKind.DUTY, null, false, "Exemption"),
    TEST_ORDER(CheckKind.DUTY, null, false, "Order of the tests"),
    TEST_METHOD(CheckKind.DUTY, null, false, "Method of a test"),
    ADJUSTER_CARE(CheckKind.DUTY, null, false, "Care of slack adjusters"),
    RECORD_TRUTH(CheckKind.DUTY, null, false, "Truth of records"),
    REPAIR_CERTIFICATE(CheckKind.DUTY, null, false, "Certificate of repair"),
    CARGO_CHECK(CheckKind.DUTY, null, false, "Checks on the way"),
    OUT_OF_SERVICE(CheckKind.DUTY, null, false, "Out of service");

    private final CheckKind kind;
    private final @Nullable Dimension dimension;
    private final boolean expected;
    private final String title;
    private final String id;

    Check(CheckKind kind, @Nullable Dimension dimension, boolean expected, String title) {
        this.kind = kind;
        this.dimension = dimension;
        this.expected = expected;
        this.title = title;
        this.id = Names.kebab(this);
    }

    /** The sort of observation that establishes this check. */
    public CheckKind kind() {
        return kind;
    }

    /** The dimension of the observed quantity, empty where nothing is measured. */
    public Optional<Dimension> dimension() {
        return Optional.ofNullable(dimension);
    }

    /**
     * Whether every place is expected to have a rule for it; where it has none, that is said aloud.
     */
    public boolean expectedEverywhere() {
        return expected;
    }

    /** What a person calls it, in sentence case. */
    public String title() {
        return title;
    }

    /** The text form, lower case with hyphens. */
    public String id() {
        return id;
    }

    /** The check with the given text form, or empty. */
    public static Optional<Check> byId(String id) {
        return Optional.ofNullable(Names.Index.BY_CHECK_ID.get(id));
    }
}
