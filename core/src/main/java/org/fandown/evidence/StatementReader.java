package org.fandown.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.check.CheckKind;
import org.fandown.check.Component;
import org.fandown.check.Verdict;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.MapNode;
import org.fandown.document.Names;
import org.fandown.document.Nearest;
import org.fandown.document.Node;
import org.fandown.document.Values;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/** Reads what a person says about one vehicle, strictly. */
public final class StatementReader {
    /** What a statement begins with. */
    public static final List<String> KEYS =
            List.of(StatementKeys.BEGIN, StatementKeys.RECORD, StatementKeys.CONCLUDE);

    private static final String UNIT = "unit";
    private static final Map<String, Component> PARTS = Names.byKebab(Component.values());
    private static final List<String> MADE = made();

    private final Vehicle vehicle;

    /**
     * A reader of statements about a vehicle.
     *
     * @param vehicle the vehicle that is inspected
     */
    public StatementReader(Vehicle vehicle) {
        this.vehicle = vehicle;
    }

    private static List<String> made() {
        List<String> made = new ArrayList<>();
        for (Check check : Check.values()) {
            if (isMade(check)) {
                made.add(check.id());
            }
        }
        return List.copyOf(made);
    }

    /** Whether a person makes the check at the vehicle: it is neither paper nor arithmetic. */
    private static boolean isMade(Check check) {
        return switch (check.kind()) {
            case DUTY, REPORT, DESIGN, BRAKE_COUNT -> false;
            default -> true;
        };
    }

    /**
     * Reads one statement.
     *
     * @param key one of {@link #KEYS}
     * @param node what stands under the key
     * @throws DocumentException if it is not such a statement, or not of this vehicle
     */
    public Statement read(String key, Node node) {
        if (key.equals(StatementKeys.BEGIN)) {
            return new Statement.Begin(check(node));
        }
        Fields fields = Fields.of(node);
        return key.equals(StatementKeys.RECORD) ? observed(fields) : concluded(fields);
    }

    private Statement observed(Fields fields) {
        Observations observations = new ObservationsReader(vehicle).read(fields);
        fields.end();
        if (observations.equals(Observations.NONE)) {
            throw fields.refuseHere(
                    "nothing is recorded",
                    "readings, wheels or parts",
                    "write what was observed, such as 'readings: { governor-cut-out: 122 psi }'");
        }
        return new Statement.Record(observations);
    }

    private Statement concluded(Fields fields) {
        Verdict verdict = fields.choice(StatementKeys.VERDICT, Verdict.values());
        List<ClaimedDefect> defects = new ArrayList<>();
        for (Node item : fields.optionalList(StatementKeys.DEFECTS)) {
            defects.add(defect(item));
        }
        fields.end();
        return new Statement.Conclude(verdict, defects);
    }

    private ClaimedDefect defect(Node item) {
        if (!(item instanceof MapNode)) {
            String text = Values.text(item);
            Component part = PARTS.get(text);
            return part != null
                    ? ClaimedDefect.of(part, "")
                    : ClaimedDefect.of(checkOrPart(item), "");
        }
        Fields fields = Fields.of(item);
        boolean ofPart = fields.has(StatementKeys.PART);
        if (ofPart && fields.has(StatementKeys.CHECK)) {
            throw fields.refuseKey(
                    StatementKeys.PART,
                    "a defect names one thing",
                    "either check, or part",
                    "remove one of the two, or write two defects");
        }
        String at = fields.has(StatementKeys.AT) ? place(fields) : "";
        ClaimedDefect defect =
                ofPart
                        ? ClaimedDefect.of(fields.choice(StatementKeys.PART, PARTS), at)
                        : ClaimedDefect.of(check(fields.node(StatementKeys.CHECK)), at);
        fields.end();
        return defect;
    }

    private String place(Fields fields) {
        String at = fields.text(StatementKeys.AT);
        if (!isUnit(at) && !isWheel(at)) {
            throw fields.refuse(
                    StatementKeys.AT,
                    "the vehicle has no such place",
                    "a wheel such as 2L on axles 1 to "
                            + vehicle.axleCount()
                            + ", or unit1 to unit"
                            + vehicle.units().size(),
                    "count units and axles from the front");
        }
        return at;
    }

    private boolean isUnit(String at) {
        for (int i = 1; i <= vehicle.units().size(); i++) {
            if (at.equals(UNIT + i)) {
                return true;
            }
        }
        return false;
    }

    private boolean isWheel(String at) {
        try {
            return vehicle.hasWheel(WheelId.parse(at));
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private static Check check(Node node) {
        return check(node, "the checks listed in docs/formats.md", MADE);
    }

    private static Check checkOrPart(Node node) {
        List<String> names = new ArrayList<>(MADE);
        names.addAll(PARTS.keySet());
        return check(node, "the checks and parts listed in docs/formats.md", names);
    }

    private static Check check(Node node, String allowed, List<String> names) {
        String text = Values.text(node);
        Optional<Check> check = Check.byId(text);
        if (check.isEmpty()) {
            throw Values.refuse(
                    node,
                    "this is not a check the program knows",
                    allowed,
                    Nearest.advice(text, names, "look it up there"));
        }
        if (!isMade(check.get())) {
            throw Values.refuse(
                    node,
                    "nobody makes this check at the vehicle",
                    allowed,
                    check.get().kind() == CheckKind.DUTY
                            ? "take it out; it is a duty on paper"
                            : "take it out; the program finds it by itself");
        }
        return check.get();
    }
}
