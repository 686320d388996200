package org.fandown.record;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    private final List<Telling> tellings = new ArrayList<>();
    private final Map<String, String> correctedBy = new TreeMap<>();

    /** What one record tells. */
    private sealed interface Telling {
        String id();
    }

    private record Told(String id, List<DefectStory> defects) implements Telling {}

    private record Settled(String id, String made, Settlement settlement) implements Telling {}

    private record Reviewed(String id, String made, Review review) implements Telling {}

    /**
     * Tells of a report.
     *
     * @param id the id of the record
     * @param judgement what was made of it, as {@link JudgementDocument} writes it
     */
    public void reported(String id, Node judgement) {
        Fields fields = Fields.of(judgement);
        LocalDate day = OffsetDateTime.parse(fields.text("moment")).toLocalDate();
        List<DefectStory> defects = new ArrayList<>();
        for (Node node : fields.list("defects")) {
            defects.add(defect(id, defects.size() + 1, day, Fields.of(node)));
        }
        tellings.add(new Told(id, defects));
    }

    private static DefectStory defect(String id, int number, LocalDate day, Fields fields) {
        String at = fields.optionalText("wheel").map(wheel -> wheel + ": ").orElse("");
        String severity = fields.text("severity");
        boolean ruled = fields.has("rule");
        String what = ruled ? "" : fields.text("component").replace('-', ' ') + ": ";
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

    /** Tells of what was done about defects. */
    public void settled(String id, String made, Settlement settlement) {
        tellings.add(new Settled(id, made, settlement));
    }

    /** Tells of a review. */
    public void reviewed(String id, String made, Review review) {
        tellings.add(new Reviewed(id, made, review));
    }

    /** Tells that a record takes the place of an older one, which counts no longer. */
    public void corrected(String old, String by) {
        correctedBy.put(old, by);
    }

    /** Every defect told of, oldest report first. */
    public List<DefectStory> stories() {
        List<DefectStory> stories = new ArrayList<>();
        for (Telling telling : tellings) {
            if (!correctedBy.containsKey(telling.id()) && telling instanceof Told told) {
                told.defects().forEach(defect -> stories.add(withEvents(defect)));
            }
        }
        return stories;
    }

    /** The defects that still stand in the way, oldest report first. */
    public List<DefectStory> open() {
        return stories().stream().filter(story -> story.state().isOpen()).toList();
    }

    private DefectStory withEvents(DefectStory defect) {
        List<DefectStory.Event> events = new ArrayList<>();
        for (Telling telling : tellings) {
            if (!correctedBy.containsKey(telling.id())) {
                event(defect, telling).ifPresent(events::add);
            }
        }
        return new DefectStory(
                defect.report(),
                defect.number(),
                defect.since(),
                defect.text(),
                defect.severity(),
                defect.outOfService(),
                events);
    }

    private static Optional<DefectStory.Event> event(DefectStory defect, Telling telling) {
        if (telling instanceof Reviewed reviewed
                && reviewed.review().report().equals(defect.report())) {
            return Optional.of(
                    new DefectStory.Event(
                            reviewed.id(),
                            reviewed.made(),
                            reviewed.review().by(),
                            Optional.empty(),
                            ""));
        }
        if (telling instanceof Settled settled
                && settled.settlement().report().equals(defect.report())) {
            return settled.settlement().items().stream()
                    .filter(item -> item.number() == defect.number())
                    .findFirst()
                    .map(item -> event(settled, item));
        }
        return Optional.empty();
    }

    private static DefectStory.Event event(Settled settled, Settlement.Item item) {
        String firm = settled.settlement().firm().map(name -> ", " + name).orElse("");
        return new DefectStory.Event(
                settled.id(),
                settled.made(),
                settled.settlement().by() + firm,
                Optional.of(item.outcome()),
                item.work());
    }
}
