package org.fandown.property.trace;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.fandown.trace.Recognised;
import org.fandown.trace.Recognised.Kind;
import org.fandown.trace.TestDrive;
import org.fandown.trace.TestDrive.Event;
import org.fandown.trace.TestDrive.Recorder;

/** Counts of what is recognised in recordings, against what truly happened. */
final class TraceTally {
    /** The governor acts this long before or after what is said of it at the most, s. */
    private static final double NEAR = 8;

    /** A switch that closed is told of within this, s. */
    private static final double PROMPT = 2.5;

    /** A cut-out or cut-in may be off by this and a step, psi. */
    private static final double OFF = 1;

    final Recorder recorder;
    int drives;
    int recognised;
    int wrong;
    int cuts;
    int cutsRight;
    int cutOutsDone;
    int cutOutsFound;
    int losses;
    int lossesInside;
    int lossesBelow;
    int lossesAbove;
    double widths;

    TraceTally(Recorder recorder) {
        this.recorder = recorder;
    }

    /** Adds what another has counted. */
    void add(TraceTally other) {
        drives += other.drives;
        recognised += other.recognised;
        wrong += other.wrong;
        cuts += other.cuts;
        cutsRight += other.cutsRight;
        cutOutsDone += other.cutOutsDone;
        cutOutsFound += other.cutOutsFound;
        losses += other.losses;
        lossesInside += other.lossesInside;
        lossesBelow += other.lossesBelow;
        lossesAbove += other.lossesAbove;
        widths += other.widths;
    }

    /** Records a drive and counts. */
    void count(TestDrive drive, long seed) {
        List<Recognised> all = drive.recognised(recorder, true, seed);
        Set<Event> found = new HashSet<>();
        drives++;
        for (Recognised each : all) {
            recognised++;
            boolean done =
                    switch (each.kind()) {
                        case CUT_OUT, CUT_IN -> governor(drive, each, found);
                        case LOSS, LOSS_APPLIED, LOSS_RELEASED -> loss(drive, each);
                        case WARNING, PARKING_CLOSED, TRAILER_CLOSED -> closed(drive, each);
                        case SUPPLY_DRAINED -> false;
                        case BUILD_UP, APPLICATIONS -> true;
                    };
            wrong += done ? 0 : 1;
        }
        for (Event event : drive.events()) {
            if (event.kind() == Kind.CUT_OUT) {
                cutOutsDone++;
                cutOutsFound += found.contains(event) ? 1 : 0;
            }
        }
    }

    private boolean governor(TestDrive drive, Recognised said, Set<Event> found) {
        Event nearest = null;
        for (Event event : drive.events()) {
            double off = Math.abs(event.seconds() - said.from());
            boolean during = event.seconds() > said.from() && event.seconds() < said.to();
            if (event.kind() == said.kind()
                    && (during || off <= NEAR)
                    && (nearest == null || off < Math.abs(nearest.seconds() - said.from()))) {
                nearest = event;
            }
        }
        if (nearest == null) {
            return false;
        }
        found.add(nearest);
        cuts++;
        cutsRight += Math.abs(said.value() - nearest.psi()) <= recorder.step() + OFF ? 1 : 0;
        return true;
    }

    private boolean loss(TestDrive drive, Recognised said) {
        boolean applied = said.kind() == Kind.LOSS_APPLIED;
        boolean done =
                said.kind() != Kind.LOSS
                        && drive.isStill(said.from())
                        && drive.isStill(said.to())
                        && drive.isBraked(said.from()) == applied
                        && drive.isBraked(said.to()) == applied;
        if (done) {
            double truth = drive.lossBetween(said.from(), said.to());
            double low = said.points().get(0).psi();
            double high = said.points().get(1).psi();
            losses++;
            lossesBelow += truth < low ? 1 : 0;
            lossesAbove += truth > high ? 1 : 0;
            lossesInside += truth >= low && truth <= high ? 1 : 0;
            widths += high - low;
        }
        return done;
    }

    private static boolean closed(TestDrive drive, Recognised said) {
        return drive.events().stream()
                .anyMatch(
                        event ->
                                event.kind() == said.kind()
                                        && Math.abs(event.seconds() - said.to()) < PROMPT);
    }
}
