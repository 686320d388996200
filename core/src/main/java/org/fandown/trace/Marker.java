package org.fandown.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.trace.OperatorMark.Clock;
import org.fandown.units.Decimals;

/** Brings the marks of a person into a trace, each at its time, where no signal tells the same. */
final class Marker {
    /** More marks than this are not listed. */
    private static final int MOST = 1000;

    private final TraceWatch watch;
    private final long[] counts;
    private final Notes notes;
    private final List<OperatorMark> waiting = new ArrayList<>();
    private final List<OperatorMark> taken = new ArrayList<>();
    private double reaction = OperatorMarks.USUAL_REACTION;

    /**
     * Makes it.
     *
     * @param counts how many samples of each channel the log had so far
     */
    Marker(TraceWatch watch, long[] counts, Notes notes) {
        this.watch = watch;
        this.counts = counts;
        this.notes = notes;
    }

    void add(OperatorMarks marks) {
        waiting.addAll(marks.marks());
        reaction = marks.reaction();
    }

    List<OperatorMark> taken() {
        return List.copyOf(taken);
    }

    boolean waits() {
        return !waiting.isEmpty();
    }

    /** Passes on what was marked up to a time. */
    void upTo(double time, double offset) {
        for (int i = 0; i < waiting.size(); i++) {
            OperatorMark mark = waiting.get(i);
            double at = mark.seconds() + (mark.clock() == Clock.LOG ? offset : 0);
            if (at >= 0 && at <= time) {
                waiting.remove(i);
                i--;
                mark(mark.word(), at);
            }
        }
    }

    /** Takes a mark at a time of the trace; returns why it is left out, empty if it is not. */
    Optional<String> mark(MarkWord word, double time) {
        Optional<String> told = told(word);
        if (told.isPresent()) {
            notes.add(
                    "mark-not-needed",
                    "The mark " + at(word, time) + " is left out: " + told.get());
            return told;
        }
        if (taken.size() < MOST) {
            taken.add(new OperatorMark(word, Clock.TRACE, time));
        }
        watch.mark(word, time, reaction, why -> open(word, time, why));
        return Optional.empty();
    }

    private void open(MarkWord word, double time, String why) {
        notes.add(
                "mark-says-nothing", "The mark " + at(word, time) + " says nothing: " + why + ".");
    }

    private static String at(MarkWord word, double time) {
        return word.id() + " at " + Decimals.format(time, 1) + " s";
    }

    private Optional<String> told(MarkWord word) {
        Channel[] channels =
                switch (word) {
                    case LOW_AIR_WARNING -> new Channel[] {Channel.WARNING};
                    case PARKING_KNOB_OUT ->
                            new Channel[] {Channel.PARKING_SWITCH, Channel.PARKING};
                    case TRAILER_KNOB_OUT -> new Channel[] {Channel.TRAILER_SHUT};
                    case FOOT_ON, FOOT_OFF, BEGIN_AIR_LOSS_APPLIED, BEGIN_AIR_LOSS_RELEASED ->
                            new Channel[] {
                                Channel.BRAKE_SWITCH, Channel.APPLICATION, Channel.PEDAL
                            };
                    case END_AIR_LOSS -> new Channel[] {};
                };
        for (Channel channel : channels) {
            if (counts[channel.index()] > 0) {
                return Optional.of("the log itself tells the " + channel.title() + ".");
            }
        }
        return Optional.empty();
    }

    /** What is still waiting lies outside of the log. */
    void finish() {
        for (OperatorMark mark : waiting) {
            notes.add(
                    "mark-outside",
                    "The mark "
                            + at(mark.word(), mark.seconds())
                            + (mark.clock() == Clock.LOG ? " of the log's clock" : "")
                            + " lies outside of the log.");
        }
    }
}
