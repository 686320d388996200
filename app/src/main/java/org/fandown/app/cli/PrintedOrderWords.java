package org.fandown.app.cli;

import java.util.List;
import org.fandown.procedure.PlaceOrders;
import org.fandown.procedure.StepSet;
import org.fandown.rulebook.Ruling;

/** Says which printed order of a place a plan keeps, or that there is none. */
final class PrintedOrderWords {
    private PrintedOrderWords() {}

    static String of(StepSet set) {
        return PlaceOrders.printed(set).map(PrintedOrderWords::kept).orElseGet(() -> none(set));
    }

    private static String kept(PlaceOrders.Printed printed) {
        return "Keeps the "
                + printed.order().force().title()
                + " of "
                + where(printed.ruling())
                + ": "
                + printed.order()
                + ". Only what is made here counts.";
    }

    private static String none(StepSet set) {
        List<Ruling> says = PlaceOrders.nearest(set.rules());
        String none = "No printed order is known here, so the order is free.";
        return says.isEmpty()
                ? none
                : none + " " + where(says.get(0)) + " says: " + says.get(0).asked().strip();
    }

    private static String where(Ruling ruling) {
        return ruling.rule().id()
                + " ("
                + ruling.value().source()
                + "; "
                + ruling.rule().provenance().title()
                + ")";
    }
}
