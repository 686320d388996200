package org.fandown.referee;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.Component;
import org.fandown.evidence.PartReading;
import org.fandown.evidence.WheelReading;
import org.fandown.practice.Sighting;
import org.fandown.procedure.CheckStep;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.vehicle.WheelId;

/** Holds what was written down of wheels and parts against what was measured and seen there. */
final class Seen {
    private final Tale tale;
    private final double inches;

    Seen(Tale tale, Sheet sheet) {
        this.tale = tale;
        inches = Figures.tolerance(sheet, Unit.INCH);
    }

    /** What is wrong with the strokes of one check. */
    List<Feedback> wheels(Attempt attempt) {
        List<Feedback> found = new ArrayList<>();
        List<String> unmeasured = new ArrayList<>();
        for (WheelReading wheel : attempt.recorded().wheels().values()) {
            wheel.value(attempt.check())
                    .ifPresent(
                            measured -> {
                                List<Quantity> shown = shown(attempt, wheel.wheel());
                                if (shown.isEmpty()) {
                                    unmeasured.add(wheel.wheel().toString());
                                } else if (!isAmong(measured.value(), shown)) {
                                    found.add(wrong(attempt, wheel.wheel(), measured, shown));
                                }
                            });
        }
        if (!unmeasured.isEmpty()) {
            found.add(unmeasured(attempt, unmeasured));
        }
        return found;
    }

    private List<Quantity> shown(Attempt attempt, WheelId wheel) {
        List<Quantity> shown = new ArrayList<>();
        for (Tale.Deed deed : tale.deeds) {
            boolean before = deed.tick() <= attempt.window().to();
            if (!before || deed.tick() < attempt.window().from()) {
                continue;
            }
            Sighting seen = deed.seen().orElse(null);
            if (attempt.check() == Check.PUSHROD_APPLIED_STROKE
                    && seen instanceof Sighting.Stroke stroke
                    && stroke.wheel().equals(wheel)) {
                shown.add(stroke.length());
            }
            if (attempt.check() == Check.PUSHROD_FREE_STROKE
                    && seen instanceof Sighting.FreeStroke free
                    && free.wheel().equals(wheel)) {
                shown.add(free.length());
            }
        }
        return shown;
    }

    /** A stroke is what was read, or the difference of two lengths that were. */
    private boolean isAmong(Quantity written, List<Quantity> shown) {
        double value = written.valueIn(Unit.INCH);
        for (Quantity each : shown) {
            if (Math.abs(each.valueIn(Unit.INCH) - value) <= inches) {
                return true;
            }
            for (Quantity less : shown) {
                double stroke = each.valueIn(Unit.INCH) - less.valueIn(Unit.INCH);
                if (Math.abs(stroke - value) <= inches && stroke > 0) {
                    return true;
                }
            }
        }
        return false;
    }

    private static Feedback wrong(
            Attempt attempt, WheelId wheel, WheelReading.Measured measured, List<Quantity> shown) {
        return new Feedback(
                Item.FIGURES,
                attempt.seconds(),
                attempt.check().title()
                        + " of "
                        + wheel
                        + " was written down as "
                        + measured.value()
                        + "; the rule showed "
                        + shown.get(shown.size() - 1)
                        + ".",
                "A brake beyond its limit passes, or a good one fails.",
                "Write down what the rule shows, wheel by wheel, before you go on.");
    }

    private static Feedback unmeasured(Attempt attempt, List<String> wheels) {
        return new Feedback(
                Item.UNSPOILED,
                attempt.seconds(),
                attempt.check().title()
                        + " was written down of "
                        + String.join(", ", wheels)
                        + ", but nobody measured it there.",
                "What was not measured proves nothing.",
                "Measure every wheel that you write down.");
    }

    /** What is wrong with the parts of the walk-round. */
    List<Feedback> parts(CheckStep step, Attempt attempt) {
        Map<Component, List<String>> looked = new EnumMap<>(Component.class);
        for (Tale.Deed deed : tale.deeds) {
            if (deed.tick() <= attempt.window().to()
                    && deed.seen().orElse(null) instanceof Sighting.Part part) {
                looked.put(part.part(), part.found());
            }
        }
        List<Feedback> found = new ArrayList<>();
        List<String> unseen = new ArrayList<>();
        for (Component part : step.manner().parts()) {
            Optional<PartReading> written =
                    Optional.ofNullable(attempt.recorded().parts().get(part));
            boolean spoken = written.isPresent() || attempt.recorded().allOtherPartsSeen();
            boolean fine = written.map(w -> w.found().isEmpty()).orElse(true);
            List<String> shown = looked.get(part);
            if (shown == null) {
                if (spoken) {
                    unseen.add(Words.inside(part.title()));
                }
            } else if (spoken && fine && !shown.isEmpty()) {
                found.add(overlooked(attempt, part, shown));
            }
        }
        if (!unseen.isEmpty()) {
            found.add(unseen(attempt, unseen));
        }
        return found;
    }

    private static Feedback overlooked(Attempt attempt, Component part, List<String> shown) {
        return new Feedback(
                Item.FIGURES,
                attempt.seconds(),
                part.title()
                        + " was written down as in order; the look at it showed: "
                        + String.join(", ", shown)
                        + ".",
                "A defect that was seen goes on the road.",
                "Write down what you see, also where you are not sure that it matters.");
    }

    private static Feedback unseen(Attempt attempt, List<String> parts) {
        return new Feedback(
                Item.UNSPOILED,
                attempt.seconds(),
                "Written down as looked at, but nobody looked: " + String.join(", ", parts) + ".",
                "What was not seen proves nothing.",
                "Look at each part on the list before you write it down.");
    }
}
