package org.fandown.practice;

import java.util.List;
import java.util.function.Consumer;

/** Performs a script on a practice truck. */
public final class ScriptRun {
    private final PracticeTruck truck;
    private final Script script;
    private long period = 1;
    private long passed;
    private Consumer<PracticeTruck> watcher = truck -> {};

    /** Makes a run; nothing happens yet. */
    public ScriptRun(PracticeTruck truck, Script script) {
        this.truck = truck;
        this.script = script;
    }

    /**
     * Performs all steps.
     *
     * @param samplePeriod time between samples, s; rounded to whole ticks, at least one
     * @param onSample is called at the start, after each period, and at the end
     */
    public void perform(double samplePeriod, Consumer<PracticeTruck> onSample) {
        period = Math.max(1, (long) Math.floor(samplePeriod / PracticeTruck.TICK + 0.5));
        passed = 0;
        watcher = onSample;
        watcher.accept(truck);
        perform(script.steps());
        if (passed % period != 0) {
            watcher.accept(truck);
        }
    }

    private void perform(List<ScriptStep> steps) {
        for (ScriptStep step : steps) {
            perform(step);
        }
    }

    private void perform(ScriptStep step) {
        if (step instanceof ScriptStep.Do doing) {
            truck.act(doing.action());
        } else if (step instanceof ScriptStep.State said) {
            truck.state(said.statement());
        } else if (step instanceof ScriptStep.At at) {
            pass(at.seconds() - truck.time());
        } else if (step instanceof ScriptStep.After after) {
            pass(after.seconds());
        } else if (step instanceof ScriptStep.Wait wait) {
            await(wait);
        } else if (step instanceof ScriptStep.Repeat repeat) {
            for (int i = 0; i < repeat.times(); i++) {
                perform(repeat.steps());
            }
        }
    }

    private void pass(double seconds) {
        long count = (long) Math.ceil(seconds / PracticeTruck.TICK - 1e-6);
        for (long i = 0; i < count; i++) {
            tick();
        }
    }

    private void tick() {
        truck.advance(PracticeTruck.TICK);
        passed++;
        if (passed % period == 0) {
            watcher.accept(truck);
        }
    }

    private void await(ScriptStep.Wait wait) {
        long count = (long) Math.ceil(wait.atMost() / PracticeTruck.TICK - 1e-6);
        for (long i = 0; i < count; i++) {
            if (isThere(wait)) {
                return;
            }
            tick();
        }
        if (!isThere(wait)) {
            truck.giveUp(wait);
        }
    }

    private boolean isThere(ScriptStep.Wait wait) {
        Dash dash = truck.dash();
        double pascals = wait.pressure().pascals();
        return switch (wait.sign()) {
            case PURGE -> truck.purging();
            case PUMPING -> truck.engineRuns() && truck.air().compressorLoaded();
            case WARNING_ON -> dash.lowAirLamp() || dash.lowAirBuzzer();
            case WARNING_OFF -> !dash.lowAirLamp() && !dash.lowAirBuzzer();
            case PARKING_KNOB_OUT -> !dash.parkingKnobIn().orElse(true);
            case TRAILER_KNOB_OUT -> !dash.trailerKnobIn().orElse(true);
            case NEEDLES_AT_LEAST -> dash.lower().pascals() >= pascals;
            case NEEDLES_AT_MOST -> dash.higher().pascals() <= pascals;
        };
    }
}
