package org.fandown.referee;

import org.fandown.document.MapNode;
import org.fandown.document.Tree;
import org.fandown.practice.RunDocument;
import org.fandown.units.Num;

/** Writes marks as a document, for programs. */
public final class MarksDocument {
    private MarksDocument() {}

    /** Writes marks. */
    public static MapNode of(Marks marks) {
        Tree.ListBuilder items = Tree.list();
        marks.items().forEach(item -> items.add(item(item)));
        Tree.MapBuilder map =
                Tree.map()
                        .put("format", "fandown-marks/1")
                        .put("simulated", true)
                        .put("care", Marks.CARE)
                        .put("scenario", marks.run().scenario().title());
        if (!marks.run().title().isEmpty()) {
            map.put("run", marks.run().title());
        }
        map.put("place", marks.place().code())
                .put("sheet", marks.sheet().title())
                .put("sheet-note", marks.sheet().note())
                .put("seconds", seconds(marks.run().seconds()))
                .put("fingerprint", RunDocument.hex(marks.run().fingerprint()));
        map.put("replayed", marks.replayed());
        if (marks.planSeconds() > 0) {
            map.put("plan-seconds", seconds(marks.planSeconds()));
        }
        return map.put("passed", marks.passed())
                .put("critical", marks.critical())
                .put("kept", marks.kept())
                .put("of", marks.of())
                .put("needed", marks.needed())
                .put("items", items)
                .build();
    }

    private static double seconds(double seconds) {
        return Num.roundTo(seconds, 2);
    }

    private static Tree.MapBuilder item(ItemMarks item) {
        Tree.ListBuilder feedback = Tree.list();
        for (Feedback each : item.feedback()) {
            Tree.MapBuilder map =
                    Tree.map()
                            .put("seconds", seconds(each.seconds()))
                            .put("happened", each.happened());
            if (!each.spoiled().isEmpty()) {
                map.put("spoiled", each.spoiled());
            }
            feedback.add(map.put("instead", each.instead()));
        }
        return Tree.map()
                .put("item", item.item().id())
                .put("title", item.item().title())
                .put("critical", item.critical())
                .put("deducted", item.deducted())
                .put("of", item.of())
                .put("feedback", feedback);
    }
}
