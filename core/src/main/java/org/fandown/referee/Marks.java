package org.fandown.referee;

import java.util.ArrayList;
import java.util.List;
import org.fandown.check.PlaceCode;
import org.fandown.practice.Run;

/**
 * The marks of a run.
 *
 * @param run what was marked
 * @param place whose rules it was marked by
 * @param sheet what counted
 * @param items the lines of the sheet, in its order
 * @param replayed whether the run replayed to the same bits as when it was made
 * @param planSeconds how long the quickest order of work takes by the planner, s; 0 if there is
 *     none
 */
public record Marks(
        Run run,
        PlaceCode place,
        Sheet sheet,
        List<ItemMarks> items,
        boolean replayed,
        double planSeconds) {
    /** Said wherever marks are shown. */
    public static final String CARE = "A practice result is not a licence to drive.";

    /** Copies the list. */
    public Marks {
        items = List.copyOf(items);
    }

    static Marks of(
            Run run,
            PlaceCode place,
            Sheet sheet,
            List<Feedback> feedback,
            boolean replayed,
            double planSeconds) {
        List<ItemMarks> items = new ArrayList<>();
        sheet.entries()
                .forEach(
                        (item, entry) -> {
                            List<Feedback> own = new ArrayList<>();
                            feedback.stream().filter(f -> f.item() == item).forEach(own::add);
                            own.sort((a, b) -> Double.compare(a.seconds(), b.seconds()));
                            int most = Math.min(entry.weight(), entry.each() * own.size());
                            items.add(
                                    new ItemMarks(
                                            item, most, entry.weight(), entry.critical(), own));
                        });
        return new Marks(run, place, sheet, items, replayed, planSeconds);
    }

    /** Returns the points that could be reached. */
    public int of() {
        return items.stream().mapToInt(ItemMarks::of).sum();
    }

    /** Returns the points that were kept. */
    public int kept() {
        return of() - items.stream().mapToInt(ItemMarks::deducted).sum();
    }

    /** Returns the points that have to be kept to pass. */
    public int needed() {
        return (int) Math.ceil(sheet.pass() * of() - 1e-9);
    }

    /** Returns whether a mistake was made that fails the run whatever the points. */
    public boolean critical() {
        return items.stream().anyMatch(item -> item.critical() && !item.feedback().isEmpty());
    }

    /** Returns whether the run is passed. */
    public boolean passed() {
        return !critical() && kept() >= needed();
    }
}
