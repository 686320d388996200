package org.fandown.trace;

import java.util.Arrays;
import java.util.function.Consumer;
import org.fandown.units.Unit;

/**
 * Turns the signals of a network into the channels of a trace.
 *
 * <p>A circuit is told by one of two messages, one with steps of 4 kPa and one of 8 kPa; the finer
 * is taken while it comes. Where both come and do not agree, that is remarked.
 */
public final class NetworkTrace implements SignalListener {
    /** The finer message counts as coming for this time, s. */
    private static final double COMES = 3;

    /** The most the finer message can say, psi. */
    private static final double MOST = Unit.KPA.convert(1000, Unit.PSI);

    private static final double TINY = 1e-6;
    private static final int CIRCUITS = 2;

    private final SampleSink sink;
    private final Consumer<Remark> remarks;
    private final TraceClock clock;
    private final double[] fineTime = new double[CIRCUITS];
    private final CircuitPair messages;
    private boolean saturated;
    private boolean failed;
    private boolean untimed;
    private boolean any;

    /** Takes the samples of a trace. */
    @FunctionalInterface
    public interface SampleSink {
        /** Takes one sample, in the unit of its channel; times never fall. */
        void sample(Channel channel, double seconds, double value);
    }

    /**
     * Makes the turner.
     *
     * @param sink where the samples go, as a rule {@link TraceWatch#sample}
     * @param remarks is told what a person should know
     */
    public NetworkTrace(SampleSink sink, Consumer<Remark> remarks) {
        this.sink = sink;
        this.remarks = remarks;
        clock = new TraceClock(remarks);
        messages = new CircuitPair(remarks);
        Arrays.fill(fineTime, Double.NEGATIVE_INFINITY);
    }

    /** Returns whether any pressure of a circuit came. */
    public boolean hasPressure() {
        return any;
    }

    /** Returns the time of the last sample, s from the first. */
    public double seconds() {
        return clock.last();
    }

    /** What is added to the time of the log for the time of the trace, s; NaN before any. */
    double offset() {
        return clock.offset();
    }

    @Override
    public void value(Signal signal, CanFrame frame, double value) {
        if (!frame.isTimed()) {
            once(Remark.Kind.NO_TIME, frame.line());
            return;
        }
        double time = clock.time(frame.seconds(), frame.line());
        switch (signal) {
            case PRIMARY -> fine(0, Channel.PRIMARY, time, psi(value), frame.line());
            case SECONDARY -> fine(1, Channel.SECONDARY, time, psi(value), frame.line());
            case CIRCUIT_1 -> coarse(0, Channel.PRIMARY, time, psi(value), frame.line());
            case CIRCUIT_2 -> coarse(1, Channel.SECONDARY, time, psi(value), frame.line());
            case SUPPLY -> sink.sample(Channel.SUPPLY, time, psi(value));
            case PARKING -> sink.sample(Channel.PARKING, time, psi(value));
            case APPLICATION -> sink.sample(Channel.APPLICATION, time, psi(value));
            case ENGINE_SPEED -> sink.sample(Channel.ENGINE_SPEED, time, value);
            case SPEED -> sink.sample(Channel.SPEED, time, value);
            case PARKING_SWITCH -> sink.sample(Channel.PARKING_SWITCH, time, value);
            case BRAKE_SWITCH -> sink.sample(Channel.BRAKE_SWITCH, time, value);
            case PEDAL -> sink.sample(Channel.PEDAL, time, value);
            case BAROMETER, AIR_TEMPERATURE -> {}
        }
    }

    private static double psi(double kilopascals) {
        return Unit.KPA.convert(kilopascals, Unit.PSI);
    }

    private void fine(int circuit, Channel channel, double time, double psi, long line) {
        any = true;
        fineTime[circuit] = time;
        messages.first(channel, psi);
        if (!saturated && psi >= MOST - TINY) {
            saturated = true;
            remarks.accept(new Remark(Remark.Kind.SATURATED, line, time, psi));
        }
        sink.sample(channel, time, psi);
    }

    private void coarse(int circuit, Channel channel, double time, double psi, long line) {
        any = true;
        messages.second(channel, psi);
        if (time - fineTime[circuit] > COMES) {
            sink.sample(channel, time, psi);
        } else {
            messages.compare(time, line);
        }
    }

    @Override
    public void absent(Signal signal, CanFrame frame, Absence why) {
        if (why == Absence.ERROR && !failed) {
            failed = true;
            remarks.accept(
                    new Remark(
                            Remark.Kind.SENSOR_ERROR, frame.line(), clock.last(), signal.number()));
        }
    }

    private void once(Remark.Kind kind, long line) {
        if (!untimed) {
            untimed = true;
            remarks.accept(new Remark(kind, line, Double.NaN, 0));
        }
    }
}
