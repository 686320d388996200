package org.fandown.air;

import java.util.Optional;
import org.fandown.air.AirSetup.Defect;

/**
 * The governor: stops the pumping at the cut-out and starts it again at the cut-in; a sticking one
 * acts some time after the pressure has got there.
 */
final class GovernorValve implements Element {
    private final AirNode sensed;
    private final AirMemory loaded;
    private final double cutIn;
    private final double cutOut;
    private final double lag;

    /** How long the pressure has called for the other state, s; of a sticking one alone. */
    private final Optional<AirMemory> waiting;

    private final boolean stuckLoaded;
    private final boolean stuckUnloaded;

    GovernorValve(Plumbing parts, AirNode sensed, AirMemory loaded, double cutIn, double cutOut) {
        this.sensed = sensed;
        this.loaded = loaded;
        this.cutIn = parts.ambient + cutIn;
        this.cutOut = parts.ambient + cutOut;
        lag = parts.setup.value(AirDefault.GOVERNOR_LAG);
        waiting =
                lag > 0
                        ? Optional.of(parts.network.memory("governor-waiting", 0))
                        : Optional.empty();
        stuckLoaded = parts.setup.has(Defect.GOVERNOR_STUCK_LOADED);
        stuckUnloaded = parts.setup.has(Defect.GOVERNOR_STUCK_UNLOADED);
    }

    @Override
    public void update(AirState state, AirControls controls, double seconds) {
        double pressure = state.pascals(sensed);
        if (stuckUnloaded) {
            state.remember(loaded, 0);
        } else if (stuckLoaded) {
            state.remember(loaded, 1);
        } else {
            boolean pumps = state.recall(loaded) > 0;
            boolean calls = pumps ? pressure >= cutOut : pressure <= cutIn;
            if (overdue(state, calls, seconds)) {
                state.remember(loaded, pumps ? 0 : 1);
            }
        }
        state.foresee(sensed, state.recall(loaded) > 0 ? cutOut : cutIn);
    }

    private boolean overdue(AirState state, boolean calls, double seconds) {
        if (waiting.isEmpty()) {
            return calls;
        }
        double since = calls ? state.recall(waiting.get()) + seconds : 0;
        boolean acts = calls && since >= lag;
        state.remember(waiting.get(), acts ? 0 : since);
        return acts;
    }
}
