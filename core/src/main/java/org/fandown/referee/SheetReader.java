package org.fandown.referee;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Nearest;
import org.fandown.document.Node;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/** Reads a marking sheet, strictly. An item that is left out does not count. */
public final class SheetReader {
    private static final int MOST_POINTS = 1000;
    private static final double MOST_PSI = 50;
    private static final double MOST_SECONDS = 600;
    private static final double MOST_INCHES = 1;
    private static final double LEAST_SHARE = 100;
    private static final double MOST_SHARE = 10_000;

    private SheetReader() {}

    /**
     * Reads one sheet.
     *
     * @throws DocumentException if the document is not a marking sheet
     */
    public static Sheet read(Node document) {
        Fields fields = Fields.of(document);
        String title = fields.text("title");
        String note = fields.optionalText("note").orElse("");
        double pass = fields.quantity("pass", Dimension.RATIO).valueIn(Unit.PERCENT);
        if (!(pass >= 0 && pass <= 100)) {
            throw fields.refuse(
                    "pass", "no run can be passed by that", "0 % to 100 %", "correct the share");
        }
        Fields items = fields.fields("items");
        Map<Item, Sheet.Entry> entries = new EnumMap<>(Item.class);
        for (String key : items.keys()) {
            entries.put(item(items, key), entry(items.fields(key), item(items, key)));
        }
        if (entries.isEmpty()) {
            throw fields.refuse(
                    "items", "nothing counts", "at least one item", "write the items that count");
        }
        items.end();
        fields.end();
        return new Sheet(title, note, pass / 100, entries);
    }

    private static Item item(Fields items, String key) {
        Optional<Item> item = Item.byId(key);
        if (item.isEmpty()) {
            List<String> names = new ArrayList<>();
            for (Item each : Item.values()) {
                names.add(each.id());
            }
            throw items.refuseKey(
                    key,
                    "this is not something a run is marked by",
                    String.join(", ", names),
                    Nearest.advice(key, names, "take one of these"));
        }
        return item.get();
    }

    private static Sheet.Entry entry(Fields fields, Item item) {
        int weight = fields.integer("weight", 0, MOST_POINTS);
        int each = fields.optionalInteger("each", 0, MOST_POINTS).orElse(weight);
        boolean critical = fields.optionalTruth("critical").orElse(false);
        Map<Dimension, Quantity> allowances = new EnumMap<>(Dimension.class);
        allowances.putAll(item.allowances());
        if (fields.has("allow")) {
            allow(fields.fields("allow"), item, allowances);
        }
        fields.end();
        return new Sheet.Entry(weight, each, critical, allowances);
    }

    private static void allow(Fields allow, Item item, Map<Dimension, Quantity> allowances) {
        for (Dimension dimension : item.allowances().keySet()) {
            String key = key(dimension);
            if (allow.has(key)) {
                Quantity amount = allow.quantity(key, dimension);
                requireInRange(allow, key, amount);
                allowances.put(dimension, amount);
            }
        }
        allow.end();
    }

    private static String key(Dimension dimension) {
        return switch (dimension) {
            case GAUGE_PRESSURE -> "pressure";
            case TIME -> "time";
            case LENGTH -> "length";
            default -> "share";
        };
    }

    private static void requireInRange(Fields allow, String key, Quantity amount) {
        Unit unit = unit(amount.dimension());
        boolean share = unit == Unit.PERCENT;
        double least = share ? LEAST_SHARE : 0;
        double most = most(unit);
        double value = amount.valueIn(unit);
        if (!(value >= least && value <= most)) {
            throw allow.refuse(
                    key,
                    "nobody can be marked by that",
                    Words.number(least)
                            + " "
                            + unit.symbol()
                            + " to "
                            + Words.number(most)
                            + " "
                            + unit.symbol(),
                    "correct the amount");
        }
    }

    private static Unit unit(Dimension dimension) {
        return switch (dimension) {
            case GAUGE_PRESSURE -> Unit.PSI;
            case TIME -> Unit.SECOND;
            case LENGTH -> Unit.INCH;
            default -> Unit.PERCENT;
        };
    }

    private static double most(Unit unit) {
        return switch (unit) {
            case PSI -> MOST_PSI;
            case SECOND -> MOST_SECONDS;
            case INCH -> MOST_INCHES;
            default -> MOST_SHARE;
        };
    }
}
