package org.fandown.evidence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Severity;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.MapNode;
import org.fandown.document.Node;
import org.fandown.document.Tree;

/**
 * Something that an earlier report of the vehicle found wrong, and that was since neither put right
 * nor certified as not needing it.
 *
 * @param report the earlier report: its id, or what people call it
 * @param since the day of that report
 * @param text what is wrong, and where
 * @param severity minor or major; empty where neither the place nor the person said
 * @param outOfService whether the place's own words put the vehicle out of service for it
 */
public record EarlierDefect(
        String report,
        LocalDate since,
        String text,
        Optional<Severity> severity,
        boolean outOfService) {
    /** The key of the list in an inspection. */
    public static final String KEY = "earlier-defects";

    /**
     * Reads the list of an inspection or of a judgement; none if it has no such key.
     *
     * @throws DocumentException if one is none
     */
    public static List<EarlierDefect> list(Fields fields) {
        List<EarlierDefect> list = new ArrayList<>();
        for (Node node : fields.optionalList(KEY)) {
            list.add(read(Fields.of(node)));
        }
        return list;
    }

    private static EarlierDefect read(Fields fields) {
        EarlierDefect defect =
                new EarlierDefect(
                        fields.text("report"),
                        fields.date("since"),
                        fields.text("text"),
                        fields.optionalChoice("severity", Severity.values()),
                        fields.optionalTruth("out-of-service").orElse(false));
        fields.end();
        return defect;
    }

    /** The defect as it stands in an inspection and in a judgement. */
    public MapNode document() {
        Tree.MapBuilder map =
                Tree.map().put("report", report).put("since", since.toString()).put("text", text);
        severity.ifPresent(s -> map.put("severity", s));
        if (outOfService) {
            map.put("out-of-service", true);
        }
        return map.build();
    }
}
