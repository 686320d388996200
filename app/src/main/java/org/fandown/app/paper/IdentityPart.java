package org.fandown.app.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.ReportItem;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.Report.Entry;
import org.fandown.vehicle.Part;
import org.fandown.vehicle.TrailerForm;
import org.fandown.vehicle.UnitKind;
import org.fandown.vehicle.VehicleUnit;

/** Who, what, when and where. What was not entered is a line to fill by pen. */
final class IdentityPart {
    private static final int COLUMNS = 5;

    private final Inspection inspection;
    private final Required required;
    private final List<Field> fields = new ArrayList<>();

    /** A label with its value; an empty value is printed as a line to write on. */
    private record Field(String label, String value, boolean required) {}

    private IdentityPart(Inspection inspection, Required required) {
        this.inspection = inspection;
        this.required = required;
    }

    static void print(Tag page, Inspection inspection, Required required) {
        new IdentityPart(inspection, required).print(page);
    }

    private void print(Tag page) {
        boolean plate = asks(ReportItem.PLATE);
        add("Vehicle", inspection.vehicle().name(), false);
        add("Unit numbers", units(), asks(ReportItem.PLATE_OR_UNIT));
        entry("Plate", Entry.PLATE, plate);
        boolean combination = inspection.vehicle().isCombination();
        if (combination) {
            entry("Plates of the trailers", Entry.TRAILER_PLATES, false);
        }
        entry("Operator or carrier", Entry.OPERATOR, asks(ReportItem.OPERATOR));
        if (!combination) {
            inspector();
        }
        add("Date and time", Words.moment(inspection.moment()), asks(ReportItem.DATE_AND_TIME));
        entry("Place of the inspection", Entry.LOCATION, asks(ReportItem.LOCATION));
        odometer();
        if (combination) {
            inspector();
        }
        driver().ifPresent(name -> add("Driver", Words.capitals(name), false));
        table(page);
    }

    private boolean asks(ReportItem item) {
        return required.asksFor(item);
    }

    private void inspector() {
        String inspector = inspection.report().entry(Entry.INSPECTOR).orElse("");
        add(
                inspection.simulated() ? "Done by" : "Inspected by",
                Words.capitals(inspector),
                asks(ReportItem.INSPECTOR_NAME));
    }

    private Optional<String> driver() {
        return inspection.report().entry(Entry.DRIVER);
    }

    private void add(String label, String value, boolean needed) {
        fields.add(new Field(label, Clean.entry(value), needed));
    }

    private void entry(String label, Entry entry, boolean needed) {
        add(label, inspection.report().entry(entry).orElse(""), needed);
    }

    private void odometer() {
        boolean fitted = inspection.vehicle().has(Part.ODOMETER);
        boolean needed =
                asks(ReportItem.ODOMETER) || (fitted && asks(ReportItem.ODOMETER_IF_FITTED));
        Optional<String> entry = inspection.report().entry(Entry.ODOMETER);
        add("Odometer", entry.orElse(fitted || needed ? "" : "none fitted"), needed);
    }

    private String units() {
        List<String> units = new ArrayList<>();
        for (VehicleUnit unit : inspection.vehicle().units()) {
            units.add(kind(unit) + " " + unit.id());
        }
        return String.join(", ", units);
    }

    /** The kind of a unit in a word: {@code tractor}, {@code semi-trailer}. */
    static String kind(VehicleUnit unit) {
        if (unit.kind() == UnitKind.TRAILER) {
            return unit.form().equals(Optional.of(TrailerForm.FULL))
                    ? "full trailer"
                    : "semi-trailer";
        }
        return org.fandown.document.Names.kebab(unit.kind());
    }

    private void table(Tag page) {
        Tag table = page.add("table", "identity").columns(List.of(24, 19, 17, 20, 20));
        for (int from = 0; from < fields.size(); from += COLUMNS) {
            Tag row = table.add("tr");
            for (int i = from; i < from + COLUMNS; i++) {
                cell(
                        row.add("td"),
                        i < fields.size() ? Optional.of(fields.get(i)) : Optional.empty());
            }
        }
    }

    private static void cell(Tag cell, Optional<Field> field) {
        if (field.isEmpty()) {
            return;
        }
        boolean open = field.get().value().isEmpty();
        Tag label = cell.add("div", "label").text(field.get().label());
        if (open && field.get().required()) {
            label.add("span", "flag").text(" required here, fill in");
        }
        cell.add("div", open ? "value blank" : "value").text(open ? "\u00a0" : field.get().value());
    }
}
