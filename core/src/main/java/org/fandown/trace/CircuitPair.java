package org.fandown.trace;

import java.util.function.Consumer;

/**
 * Compares what two sources say of the two circuits, such as two messages or two columns: whether
 * they agree, and whether one of them names the circuits the other way round. Says so once.
 */
final class CircuitPair {
    /** Both differ by less than this, psi: a step of each and some time between. */
    private static final double SAME = 3;

    /** What differs for this time is not only late, s. */
    private static final double LASTING = 5;

    private final Consumer<Remark> remarks;
    private final double[] first = {Double.NaN, Double.NaN};
    private final double[] second = {Double.NaN, Double.NaN};
    private final double[] since = {Double.NaN, Double.NaN};
    private boolean said;

    CircuitPair(Consumer<Remark> remarks) {
        this.remarks = remarks;
    }

    /** Takes what the first source says of a circuit, psi; other channels mean nothing here. */
    void first(Channel channel, double psi) {
        put(first, channel, psi);
    }

    /** Takes what the second says of it, psi. */
    void second(Channel channel, double psi) {
        put(second, channel, psi);
    }

    private static void put(double[] source, Channel channel, double psi) {
        if (channel == Channel.PRIMARY) {
            source[0] = psi;
        } else if (channel == Channel.SECONDARY) {
            source[1] = psi;
        }
    }

    /** Compares what both say now. */
    void compare(double time, long line) {
        for (int circuit = 0; !said && circuit < since.length; circuit++) {
            compare(circuit, time, line);
        }
    }

    private void compare(int circuit, double time, long line) {
        double off = Math.abs(second[circuit] - first[circuit]);
        if (!(off >= SAME)) {
            since[circuit] = Double.NaN;
            return;
        }
        if (Double.isNaN(since[circuit])) {
            since[circuit] = time;
        }
        if (isSwapped()) {
            say(Remark.Kind.CIRCUITS_SWAPPED, time, line, off);
        } else if (time - since[circuit] >= LASTING) {
            say(Remark.Kind.CIRCUITS_DISAGREE, time, line, off);
        }
    }

    private boolean isSwapped() {
        return Math.abs(second[0] - first[1]) < SAME && Math.abs(second[1] - first[0]) < SAME;
    }

    private void say(Remark.Kind kind, double time, long line, double off) {
        said = true;
        remarks.accept(new Remark(kind, line, time, off));
    }
}
