package org.fandown.rulebook;

import java.util.List;
import java.util.Optional;
import org.fandown.check.Circumstance;
import org.fandown.rulebook.NumericLimit.Edge;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/** Ready-made demands. */
final class Demands {
    private Demands() {}

    static Demand exactly(Circumstance circumstance, int count) {
        Quantity quantity = Quantity.of(count, Unit.EACH);
        Edge edge = new Edge(new Bound.Figure(new Printed(List.of(quantity))), true);
        return new Demand(
                circumstance,
                List.of(),
                Optional.of(
                        new NumericLimit(Optional.of(edge), Optional.of(edge), Optional.empty())));
    }
}
