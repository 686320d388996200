package org.fandown.practice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.air.FaultCase;
import org.fandown.check.Component;
import org.fandown.check.PlaceCode;
import org.fandown.vehicle.Vehicle;

/**
 * An exercise: a vehicle, what is wrong with it, where it stands and how it is found. Immutable.
 *
 * @param title what it is called
 * @param told what the learner is told, empty text if nothing
 * @param place whose rules it is about, empty if none
 * @param vehicle the vehicle
 * @param faults what is wrong with its air system
 * @param parts what is wrong with parts looked at on the walk-round, by component
 * @param start how it is found
 * @param ground where it stands
 * @param transmission what is between engine and wheels
 * @param seed makes the small errors of instruments, always the same for the same seed
 */
public record Scenario(
        String title,
        String told,
        Optional<PlaceCode> place,
        Vehicle vehicle,
        List<FaultCase> faults,
        Map<Component, List<String>> parts,
        StartState start,
        Ground ground,
        Transmission transmission,
        long seed) {
    /** What is between engine and wheels. */
    public enum Transmission {
        /** A gearbox with a clutch pedal. */
        MANUAL,
        /** A gearbox with a torque converter. */
        AUTOMATIC
    }

    /** Copies the collections. */
    public Scenario {
        faults = List.copyOf(faults);
        Map<Component, List<String>> copy = new EnumMap<>(Component.class);
        parts.forEach((part, found) -> copy.put(part, List.copyOf(found)));
        parts = Collections.unmodifiableMap(copy);
    }

    /** Returns a sound vehicle on level ground, found empty. */
    public static Scenario of(Vehicle vehicle) {
        return new Scenario(
                vehicle.name(),
                "",
                Optional.empty(),
                vehicle,
                List.of(),
                Map.of(),
                StartState.EMPTY,
                Ground.LEVEL,
                Transmission.MANUAL,
                1);
    }

    /** Returns the same with one more fault. */
    public Scenario with(FaultCase fault) {
        List<FaultCase> more = new ArrayList<>(faults);
        more.add(fault);
        return new Scenario(
                title, told, place, vehicle, more, parts, start, ground, transmission, seed);
    }

    /** Returns the same, found otherwise. */
    public Scenario with(StartState found) {
        return new Scenario(
                title, told, place, vehicle, faults, parts, found, ground, transmission, seed);
    }

    /** Returns the same, standing elsewhere. */
    public Scenario with(Ground stands) {
        return new Scenario(
                title, told, place, vehicle, faults, parts, start, stands, transmission, seed);
    }
}
