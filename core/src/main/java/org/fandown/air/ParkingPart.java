package org.fandown.air;

import java.util.function.Function;
import org.fandown.air.AirControls.Knob;
import org.fandown.air.AirOutlet.Kind;
import org.fandown.air.AirSetup.Defect;

/** The dash valves of a powered unit, its spring brakes and the lines to a towed unit. */
final class ParkingPart {
    final AirMemory parkingKnob;
    final AirMemory trailerKnob;
    private final Plumbing parts;
    private final ServicePart service;
    private final boolean tows;
    private final AirNode[] circuits;
    private final AirNode dash;
    private final AirNode parkLine;

    ParkingPart(Plumbing parts, SupplyPart supply, ServicePart service, boolean tows) {
        this.parts = parts;
        this.service = service;
        this.tows = tows;
        circuits = new AirNode[] {supply.primary, supply.secondary};
        dash = parts.line("dash", AirDefault.SHORT_LINE);
        parts.elements.add(
                DoubleCheck.ofCircuits(parts, "dash", supply.primary, supply.secondary, dash));
        supply.parking.ifPresent(
                node -> parts.check("dash-check-parking", node, dash, AirDefault.FEED_WAY));
        parkLine = parts.line("park-line", AirDefault.SHORT_LINE);
        parkingKnob = parts.network.memory("parking-knob", 0);
        trailerKnob = parts.network.memory("trailer-knob", 0);
        addKnob(
                "parking-valve",
                parkLine,
                parkingKnob,
                AirDefault.PARKING_POP,
                Defect.PARKING_KNOB_STICKS,
                circuits,
                AirControls::parking);
    }

    private void addKnob(
            String name,
            AirNode line,
            AirMemory knob,
            AirDefault pop,
            Defect sticks,
            AirNode[] heldBy,
            Function<AirControls, Knob> hand) {
        AirLink feed = parts.way(name, dash, line, AirDefault.KNOB_WAY);
        AirLink exhaust = parts.outlet(Kind.EXHAUST, name + "-exhaust", line, AirDefault.KNOB_WAY);
        KnobValve.Trip trip =
                new KnobValve.Trip(
                        parts.absolute(pop),
                        parts.absolute(AirDefault.KNOB_HOLD),
                        parts.setup.has(sticks));
        parts.elements.add(
                new KnobValve(
                        feed,
                        exhaust,
                        knob,
                        parts.network.memory(name + "-latch", 0),
                        circuits,
                        heldBy,
                        trip,
                        hand));
    }

    /** Adds the spring brakes of a group behind a relay valve. */
    void addSprings(BrakeGroup group, AirNode serviceManifold) {
        if (!group.hasSprings()) {
            return;
        }
        AirNode manifold = parts.line(group.name() + "-spring", AirDefault.SHORT_LINE);
        AirLink relay =
                parts.lapping(
                        "spring-relay-" + group.name(),
                        dash,
                        manifold,
                        AirDefault.KNOB_WAY,
                        AirDefault.RELAY_EXHAUST,
                        parkLine,
                        serviceManifold);
        SpringControl.Signals signals =
                new SpringControl.Signals(
                        parkLine,
                        serviceManifold,
                        service.primaryDelivery,
                        service.secondaryDelivery);
        parts.elements.add(new SpringControl(parts, relay, signals, tows));
        group.addSprings(parts, manifold);
    }

    /** Adds trailer supply knob, hand valve and tractor protection; returns the lines. */
    GladHands.Lines addLines() {
        AirNode supplyLine = parts.line("supply-line-1", AirDefault.TRACTOR_LINE);
        AirNode controlLine = parts.line("control-line-1", AirDefault.TRACTOR_LINE);
        addKnob(
                "trailer-supply-valve",
                supplyLine,
                trailerKnob,
                AirDefault.TRAILER_POP,
                Defect.TRAILER_KNOB_STICKS,
                new AirNode[] {supplyLine},
                ParkingPart::trailerHand);
        AirNode signal = addSignal();
        AirLink valve = parts.way("tractor-protection", signal, controlLine, AirDefault.FOOT_WAY);
        AirLink vent =
                parts.outlet(
                        Kind.EXHAUST, "tractor-protection-vent", controlLine, AirDefault.KNOB_WAY);
        Latch latch =
                new Latch(
                        supplyLine,
                        valve,
                        parts.network.memory("tractor-protection", 0),
                        parts.absolute(AirDefault.PROTECTION_OPEN),
                        parts.absolute(AirDefault.PROTECTION_CLOSE));
        parts.elements.add(new TractorProtection(parts, latch, valve, vent));
        return new GladHands.Lines(supplyLine, controlLine);
    }

    /** The parking knob pulled out takes the trailer supply knob with it. */
    private static Knob trailerHand(AirControls controls) {
        return controls.parking() == Knob.PULLED ? Knob.PULLED : controls.trailer();
    }

    private AirNode addSignal() {
        AirNode pedal = parts.line("pedal-signal", AirDefault.SHORT_LINE);
        AirNode hand = parts.line("hand-delivery", AirDefault.SHORT_LINE);
        AirNode signal = parts.line("trailer-signal", AirDefault.SHORT_LINE);
        AirLink valve =
                parts.lapping("hand-valve", dash, hand, AirDefault.KNOB_WAY, AirDefault.KNOB_WAY);
        parts.elements.add(new HandValve(parts, valve));
        parts.elements.add(
                DoubleCheck.ofSignals(
                        parts, "pedal", service.primaryDelivery, service.secondaryDelivery, pedal));
        parts.elements.add(DoubleCheck.ofSignals(parts, "hand", pedal, hand, signal));
        return signal;
    }
}
