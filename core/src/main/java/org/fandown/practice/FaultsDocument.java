package org.fandown.practice;

import java.util.List;
import org.fandown.air.Fault;
import org.fandown.air.FaultSize;
import org.fandown.document.MapNode;
import org.fandown.document.Tree;
import org.fandown.units.Unit;

/** Writes faults as a document, for programs. */
public final class FaultsDocument {
    private FaultsDocument() {}

    /**
     * Writes faults.
     *
     * @param faults the faults, all of the catalogue or those of one vehicle
     */
    public static MapNode of(List<Fault> faults) {
        Tree.ListBuilder list = Tree.list();
        faults.forEach(fault -> list.add(one(fault)));
        return Tree.map().put("format", "fandown-faults/1").put("faults", list).build();
    }

    private static Tree.MapBuilder one(Fault fault) {
        Tree.MapBuilder map =
                Tree.map()
                        .put("fault", fault.id())
                        .put("title", fault.title())
                        .put("group", fault.group())
                        .put("at", at(fault));
        FaultSize size = fault.size();
        if (!size.equals(FaultSize.NONE)) {
            map.put("least", amount(size.least(), size))
                    .put("usual", amount(size.usual(), size))
                    .put("most", amount(size.most(), size));
        }
        return map.put("shows", fault.shows());
    }

    private static String at(Fault fault) {
        if (fault.atWheel()) {
            return "wheel";
        }
        return fault.atUnit() ? "unit" : "fixed";
    }

    private static Tree.MapBuilder amount(double number, FaultSize size) {
        boolean part = size.unit().isEmpty();
        return Tree.map()
                .put("value", part ? 100 * number : number)
                .put("unit", part ? Unit.PERCENT.symbol() : size.unit());
    }
}
