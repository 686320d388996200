package org.fandown.check;

/**
 * Something a place may require a written inspection report to hold. Text form: lower case with
 * hyphens.
 */
public enum ReportItem {
    PLATE_OR_UNIT("plate or unit number"),
    PLATE("plate"),
    OPERATOR("name of the operator or carrier"),
    DATE_AND_TIME("date and time"),
    LOCATION("place of the inspection"),
    DEFECTS_OR_NONE("defects found, or that none were found"),
    PARTS_INSPECTED("list of parts inspected"),
    INSPECTOR_NAME("name of the inspector in legible letters"),
    INSPECTOR_SIGNATURE("signature of the inspector"),
    INSPECTOR_STATEMENT("inspector's statement that the inspection met the rules"),
    DRIVER_SIGNATURE_IF_DIFFERENT("driver's signed statement, where another person inspected"),
    ODOMETER_IF_FITTED("odometer reading, if the vehicle has one"),
    ODOMETER("odometer reading"),
    TRAILER_UNITS("plates or unit numbers of the trailers"),
    REPAIR_STATEMENT("statement that defects were put right or need no repair"),
    WORK_DONE("work done"),
    RESULT("result of the inspection");

    private final String title;

    ReportItem(String title) {
        this.title = title;
    }

    /** What a person calls it, without a capital. */
    public String title() {
        return title;
    }

    /** The text form, lower case with hyphens. */
    public String id() {
        return Names.kebab(this);
    }
}
