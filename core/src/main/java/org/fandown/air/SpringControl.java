package org.fandown.air;

import org.fandown.air.AirSetup.Defect;

/**
 * Control of the spring brakes of a powered unit: held off by the parking line; let on with the
 * pedal when the primary circuit has failed; held off by the service air where both would add up.
 */
final class SpringControl implements Element {
    private final AirLink relay;
    private final AirNode parkLine;
    private final AirNode service;
    private final AirNode primaryDelivery;
    private final AirNode secondaryDelivery;
    private final boolean modulates;
    private final boolean antiCompound;
    private final double lag;

    /**
     * Where it takes its signals from.
     *
     * @param parkLine line behind the parking knob
     * @param service service air at the same brakes
     * @param primary delivery of the foot valve's primary side
     * @param secondary delivery of its secondary side
     */
    record Signals(AirNode parkLine, AirNode service, AirNode primary, AirNode secondary) {}

    SpringControl(Plumbing parts, AirLink relay, Signals signals, boolean tows) {
        this.relay = relay;
        parkLine = signals.parkLine();
        service = signals.service();
        primaryDelivery = signals.primary();
        secondaryDelivery = signals.secondary();
        parts.fitted("anti-compound");
        if (!tows) {
            parts.fitted("spring-modulation");
        }
        modulates = !tows && !parts.setup.has(Defect.NO_MODULATION);
        antiCompound = !parts.setup.has(Defect.NO_ANTI_COMPOUND);
        lag = parts.pascals(AirDefault.FOOT_LAG);
    }

    @Override
    public void update(AirState state, AirControls controls, double seconds) {
        double less = 0;
        if (modulates) {
            double missing =
                    state.pascals(secondaryDelivery) - state.pascals(primaryDelivery) - 2 * lag;
            less = Math.max(0, missing);
        }
        double command = state.pascals(parkLine) - less;
        if (antiCompound && state.pascals(service) > command) {
            state.follow(relay, service, 0);
        } else {
            state.follow(relay, parkLine, -less);
        }
    }
}
