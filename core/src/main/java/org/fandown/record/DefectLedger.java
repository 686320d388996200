package org.fandown.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.fandown.check.Severity;
import org.fandown.document.Fields;
import org.fandown.document.Node;

/**
 * Every defect that the records of a vehicle tell of, and what became of it. The records are told
 * in the order of their arrival. Not for use by several threads.
 */
public final class DefectLedger {
    private static final String NOT_STATED = "not-stated";

    private final Map<String, Told> reports = new LinkedHashMap<>();
    private final Map<String, Told> open = new LinkedHashMap<>();

    /** Which report a settlement or a review is about, by the id of its record. */
    private final Map<String, String> about = new TreeMap<>();

    /** A report, and what was said of it since. */
    private static final class Told {
        private final List<DefectStory> defects;
        private final Map<String, List<DefectStory.Event>> events = new LinkedHashMap<>();

        private Told(List<DefectStory> defects) {
            this.defects = defects;
        }

        private List<DefectStory> stories() {
            return defects.stream().map(this::story).toList();
        }

        private DefectStory story(DefectStory defect) {
            List<DefectStory.Event> own = new ArrayList<>();
            for (List<DefectStory.Event> each : events.values()) {
                for (DefectStory.Event event : each) {
                    if (event.defect() == 0 || event.defect() == defect.number()) {
                        own.add(event);
                    }
                }
            }
            return defect.with(own);
        }

        private List<DefectStory> open() {
            return stories().stream().filter(story -> story.state().isOpen()).toList();
        }
    }

    /**
     * Tells of a report.
     *
     * @param id the id of the record
     * @param judgement what was made of it, as {@link JudgementDocument} writes it
     */
    public void reported(String id, Node judgement) {
        Fields fields = Fields.of(judgement);
        LocalDate day = fields.moment("moment").toLocalDate();
        List<DefectStory> defects = new ArrayList<>();
        for (Node node : fields.list("defects")) {
            defects.add(defect(id, defects.size() + 1, day, Fields.of(node)));
        }
        reports.put(id, new Told(defects));
        look(id);
    }

    private static DefectStory defect(String id, int number, LocalDate day, Fields fields) {
        String at = fields.optionalText("wheel").map(wheel -> wheel + ": ").orElse("");
        String severity = fields.text("severity");
        String what = fields.has("rule") ? "" : fields.text("component").replace('-', ' ') + ": ";
        return new DefectStory(
                id,
                number,
                day,
                at + what + fields.text("text"),
                severity.equals(NOT_STATED)
                        ? Optional.empty()
                        : Optional.of(fields.choice("severity", Severity.values())),
                fields.optionalTruth("out-of-service").orElse(false),
                List.of());
    }

    /** Tells of what was done about defects of a report; one that was not told of is passed by. */
    public void settled(String id, String made, Settlement settlement) {
        String by = settlement.by() + settlement.firm().map(name -> ", " + name).orElse("");
        List<DefectStory.Event> events = new ArrayList<>();
        for (Settlement.Item item : settlement.items()) {
            events.add(
                    new DefectStory.Event(
                            id, item.number(), made, by, Optional.of(item.outcome()), item.work()));
        }
        tell(id, settlement.report(), events);
    }

    /** Tells of a review of a report; one that was not told of is passed by. */
    public void reviewed(String id, String made, Review review) {
        tell(
                id,
                review.report(),
                List.of(new DefectStory.Event(id, 0, made, review.by(), Optional.empty(), "")));
    }

    private void tell(String id, String report, List<DefectStory.Event> events) {
        Told told = reports.get(report);
        if (told != null) {
            told.events.put(id, events);
            about.put(id, report);
            look(report);
        }
    }

    /** Tells that another record takes the place of this one, which counts no longer. */
    public void corrected(String old) {
        String report = about.getOrDefault(old, "");
        Told told = reports.get(report);
        if (told != null) {
            told.events.remove(old);
            look(report);
        }
        reports.remove(old);
        open.remove(old);
    }

    private void look(String report) {
        Told told = reports.get(report);
        if (told == null || told.open().isEmpty()) {
            open.remove(report);
        } else {
            open.put(report, told);
        }
    }

    /** How many defects a report has, empty if it was not told of, or counts no longer. */
    public OptionalInt defects(String report) {
        Told told = reports.get(report);
        return told == null ? OptionalInt.empty() : OptionalInt.of(told.defects.size());
    }

    /** The defects of one report; none if it was not told of. */
    public List<DefectStory> of(String report) {
        Told told = reports.get(report);
        return told == null ? List.of() : told.stories();
    }

    /** Every defect told of, oldest report first. */
    public List<DefectStory> stories() {
        return reports.values().stream().flatMap(told -> told.stories().stream()).toList();
    }

    /** The defects that still stand in the way, in the order in which they were opened. */
    public List<DefectStory> open() {
        return open.values().stream().flatMap(told -> told.open().stream()).toList();
    }
}
