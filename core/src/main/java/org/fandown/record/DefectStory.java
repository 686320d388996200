package org.fandown.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Severity;
import org.fandown.document.MapNode;
import org.fandown.document.Tree;
import org.fandown.evidence.EarlierDefect;

/**
 * A defect from the report that found it to its end.
 *
 * @param report the id of the report
 * @param number its place among the defects of the report, from 1
 * @param since the day of the report
 * @param text what is wrong, and where
 * @param severity minor or major, empty where nobody said
 * @param outOfService whether the place's own words put the vehicle out of service for it
 * @param events what was done about it since, oldest first
 */
public record DefectStory(
        String report,
        int number,
        LocalDate since,
        String text,
        Optional<Severity> severity,
        boolean outOfService,
        List<Event> events) {

    /** Where a defect stands. */
    public enum State {
        /** Reported, and the vehicle may be used until its next inspection. */
        REPORTED("reported"),
        /** Reported, and the vehicle must not be driven before it is put right. */
        GROUNDED("not to be driven until put right"),
        /** Reported, and the place puts the vehicle out of service for it. */
        OUT_OF_SERVICE("out of service"),
        /** Put right. */
        REPAIRED("put right"),
        /** Certified as needing no repair for safe driving. */
        NOT_NEEDED("needs no repair"),
        /** Put right or certified, and reviewed by a driver since. */
        REVIEWED("settled and reviewed");

        private final String title;

        State(String title) {
            this.title = title;
        }

        /** How it is said. */
        public String title() {
            return title;
        }

        /** Whether it stands in the way of a verdict that the vehicle is fit to move. */
        public boolean isOpen() {
            return this == REPORTED || this == GROUNDED || this == OUT_OF_SERVICE;
        }
    }

    /**
     * Something that was done about it.
     *
     * @param record the id of the record that says so
     * @param defect the number of the defect, 0 for the whole report
     * @param made when
     * @param by who
     * @param outcome what became of it, empty if it was reviewed
     * @param work what was done, empty if it was reviewed
     */
    public record Event(
            String record,
            int defect,
            String made,
            String by,
            Optional<Settlement.Outcome> outcome,
            String work) {}

    /** Copies the list. */
    public DefectStory {
        events = List.copyOf(events);
    }

    /** The same with these events. */
    DefectStory with(List<Event> all) {
        return new DefectStory(report, number, since, text, severity, outOfService, all);
    }

    /** Where it stands now. */
    public State state() {
        State state = outOfService ? State.OUT_OF_SERVICE : first();
        for (Event event : events) {
            if (event.outcome().isPresent()) {
                state =
                        event.outcome().get() == Settlement.Outcome.REPAIRED
                                ? State.REPAIRED
                                : State.NOT_NEEDED;
            } else if (!state.isOpen()) {
                state = State.REVIEWED;
            }
        }
        return state;
    }

    private State first() {
        return severity.equals(Optional.of(Severity.MAJOR)) ? State.GROUNDED : State.REPORTED;
    }

    /** What a later inspection has to know of it. */
    public EarlierDefect earlier() {
        return new EarlierDefect(report, since, text, severity, outOfService);
    }

    /** The story as a document. */
    public MapNode document() {
        Tree.ListBuilder list = Tree.list();
        for (Event event : events) {
            Tree.MapBuilder map =
                    Tree.map()
                            .put("record", event.record())
                            .put("made", event.made())
                            .put("by", event.by());
            event.outcome().ifPresent(outcome -> map.put("outcome", outcome));
            list.add(event.work().isEmpty() ? map : map.put("work", event.work()));
        }
        Tree.MapBuilder map =
                Tree.map()
                        .put("report", report)
                        .put("defect", number)
                        .put("since", since.toString())
                        .put("text", text)
                        .put("state", state())
                        .put("words", state().title())
                        .put("open", state().isOpen());
        severity.ifPresent(s -> map.put("severity", s));
        return map.put("events", list).build();
    }
}
