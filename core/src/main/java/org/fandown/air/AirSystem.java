package org.fandown.air;

import java.util.List;
import java.util.Optional;
import org.fandown.air.AirSetup.Defect;
import org.fandown.units.GaugePressure;
import org.fandown.units.Length;
import org.fandown.units.RotationalSpeed;
import org.fandown.units.TimeSpan;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/**
 * The air system of one vehicle while it runs.
 *
 * <p>Laid out from the vehicle file and an {@link AirSetup}; {@link #control} says what a person
 * does, {@link #advance} lets time pass, and the other methods read what there is to read. The
 * volumes have stable names: {@code supply}, {@code primary}, {@code secondary}, {@code parking},
 * {@code park-line}, {@code primary-delivery}, {@code 1L.service}, {@code 2L.spring}, {@code
 * supply-line-1}, {@code control-line-1}, {@code unit2.reservoir} and so on, units and axles being
 * counted from the front.
 *
 * <p>Deterministic: the same calls give the same bits on every machine. Not safe for use by several
 * threads.
 */
public final class AirSystem {
    /** Short steps while much changes, long ones while little does. */
    public static final StepControl QUICK =
            new StepControl(
                    TimeSpan.ofSeconds(0.001), TimeSpan.ofSeconds(2), GaugePressure.ofPsi(0.5));

    private final AirPlan plan;
    private final AirSetup setup;
    private final AirStepper stepper;
    private final AirState state;
    private final StepControl steps;
    private final List<AirOutlet> outlets;

    private AirSystem(AirPlan plan, AirSetup setup, StepControl steps) {
        this.plan = plan;
        this.setup = setup;
        this.steps = steps;
        stepper = new AirStepper(plan.network);
        state = plan.network.stateAtRest();
        outlets = plan.outlets.stream().map(spec -> new AirOutlet(spec, state)).toList();
        control(AirControls.NONE);
    }

    /**
     * Makes the air system of a vehicle in standard air: empty, engine off, knobs out.
     *
     * @param vehicle the vehicle
     * @param setup what is special about it
     * @return the system at time 0
     * @throws IllegalArgumentException if the setup names a volume or part this vehicle has not
     */
    public static AirSystem of(Vehicle vehicle, AirSetup setup) {
        return of(vehicle, setup, Ambient.STANDARD, QUICK);
    }

    /**
     * Makes the air system of a vehicle: empty, engine off, knobs out.
     *
     * @param vehicle the vehicle
     * @param setup what is special about it
     * @param ambient the air around
     * @param steps length of the steps through time
     * @return the system at time 0
     * @throws IllegalArgumentException if the setup names a volume or part this vehicle has not
     */
    public static AirSystem of(
            Vehicle vehicle, AirSetup setup, Ambient ambient, StepControl steps) {
        return new AirSystem(new AirPlan(vehicle, setup, ambient), setup, steps);
    }

    /** Sets what a person does from now on. */
    public void control(AirControls controls) {
        plan.elements.control(controls);
        plan.elements.after(state, 0);
        state.restartStep();
    }

    /** Sets the engine's speed, which changes all the time, without a fresh start of the steps. */
    public void turn(RotationalSpeed engine) {
        plan.elements.control(controls().withEngine(engine));
    }

    /** Returns what a person does now. */
    public AirControls controls() {
        return plan.elements.controls();
    }

    /**
     * Lets time pass.
     *
     * @param seconds how much, 0 or more
     * @throws IllegalArgumentException if the time is below 0
     */
    public void advance(double seconds) {
        stepper.advance(state, state.time() + seconds, steps, plan.elements);
    }

    /**
     * Fills all reservoirs of all units, with the knobs in and the springs held off, as after a
     * long build-up and a pause, engine off.
     *
     * @param pressure the pressure in them
     */
    public void fill(GaugePressure pressure) {
        for (AirNode node : plan.network.nodes()) {
            if (plan.holdsAirAtRest(node)) {
                state.setPressure(node, pressure);
            }
        }
        plan.pushKnobs(state, pressure);
        control(controls());
        state.remember(plan.primaryNeedle, state.gauge(plan.supply.primary).pascals());
        state.remember(plan.secondaryNeedle, state.gauge(plan.supply.secondary).pascals());
    }

    /** Returns the names of all volumes. */
    public List<String> volumes() {
        return plan.network.nodes().stream().map(AirNode::name).toList();
    }

    /** Returns the pressure in a volume, empty if there is none of this name. */
    public Optional<GaugePressure> find(String volume) {
        return plan.network.node(volume).map(state::gauge);
    }

    /**
     * Returns the pressure in a volume.
     *
     * @throws IllegalArgumentException if there is none of this name
     */
    public GaugePressure pressure(String volume) {
        return find(volume)
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "There is no volume '" + volume + "'; see volumes()."));
    }

    /** Returns what the primary gauge shows. */
    public GaugePressure primaryNeedle() {
        return new GaugePressure(state.recall(plan.primaryNeedle));
    }

    /** Returns what the secondary gauge shows. */
    public GaugePressure secondaryNeedle() {
        return new GaugePressure(state.recall(plan.secondaryNeedle));
    }

    /** Returns whether the low-air switch is closed. */
    public boolean lowAirSwitch() {
        return state.recall(plan.lowAir) > 0;
    }

    /** Returns whether the low-air lamp is lit, with the key on. */
    public boolean lowAirLamp() {
        return lowAirSwitch() && !setup.has(Defect.LOW_AIR_LAMP_DEAD);
    }

    /** Returns whether the low-air buzzer sounds, with the key on. */
    public boolean lowAirBuzzer() {
        return lowAirSwitch() && !setup.has(Defect.LOW_AIR_BUZZER_DEAD);
    }

    /** Returns whether the stop lamps are lit. */
    public boolean stopLamps() {
        return state.recall(plan.stopLamp) > 0;
    }

    /** Returns whether the compressor pumps when the engine turns. */
    public boolean compressorLoaded() {
        return state.recall(plan.supply.loaded) > 0;
    }

    /** Returns the air that leaves the dryer's purge valve, kg/s. */
    public double purgeFlow() {
        return Math.max(0, state.flow(plan.supply.purge));
    }

    /**
     * Returns all ways by which air can leave to the outside, in a fixed order. The list is made
     * once; each way tells its flow when asked.
     */
    public List<AirOutlet> outlets() {
        return outlets;
    }

    /** Returns whether the parking knob is in, empty if there is none. */
    public Optional<Boolean> parkingKnobIn() {
        return plan.parking.map(part -> state.recall(part.parkingKnob) > 0);
    }

    /** Returns whether the trailer supply knob is in, empty if the vehicle cannot tow. */
    public Optional<Boolean> trailerKnobIn() {
        return plan.parking
                .filter(part -> plan.tows)
                .map(part -> state.recall(part.trailerKnob) > 0);
    }

    /**
     * Returns how far a push rod is out: by service air or by its spring, whichever is more.
     *
     * @param wheel the wheel
     * @return the stroke, empty if the wheel has no air chamber
     */
    public Optional<Length> pushRod(WheelId wheel) {
        return plan.brakes.stream()
                .filter(end -> end.wheel.equals(wheel))
                .findFirst()
                .map(this::stroke);
    }

    /** Returns the travel of a push rod until the linings touch, empty without an air chamber. */
    public Optional<Length> freeStroke(WheelId wheel) {
        return plan.brakes.stream()
                .filter(end -> end.wheel.equals(wheel))
                .findFirst()
                .map(end -> Length.ofInches(end.freeStroke()));
    }

    /** Returns the part of its force that is left to the spring of a spring brake, 0 to 1. */
    public double springLeft(WheelId wheel) {
        return switch (setup.wheel(wheel).spring().orElse(AirSetup.Spring.DRAGGING)) {
            case CAGED -> 0;
            case BROKEN -> BrakeEnd.BROKEN_LEFT;
            case DRAGGING -> 1;
        };
    }

    /** Returns the wheels that have an air chamber, from the front. */
    public List<WheelId> wheels() {
        return plan.brakes.stream().map(end -> end.wheel).toList();
    }

    private Length stroke(BrakeEnd end) {
        double service = plan.network.node(end.serviceName()).map(state::strokeMetres).orElse(0.0);
        double spring =
                plan.network
                        .node(end.springName())
                        .map(
                                n ->
                                        Length.ofInches(end.parkedStroke()).metres()
                                                - state.strokeMetres(n))
                        .orElse(0.0);
        return new Length(Math.max(service, Math.max(0, spring)));
    }

    /**
     * Returns the air in all volumes and what left to the outside, kg: it grows by what is pumped.
     */
    public double kilogramsInAll() {
        double sum = 0;
        for (AirNode node : plan.network.nodes()) {
            sum += state.kilograms(node);
        }
        return sum;
    }

    /** Returns the air pumped since the start, kg. */
    public double kilogramsPumped() {
        return state.recall(plan.pumped);
    }

    /** Returns the state, for readings this class has no method for. */
    public AirState state() {
        return state;
    }
}
