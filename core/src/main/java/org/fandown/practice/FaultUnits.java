package org.fandown.practice;

import java.util.Optional;
import org.fandown.air.FaultSize;
import org.fandown.document.Node;
import org.fandown.document.Tree;
import org.fandown.units.Decimals;
import org.fandown.units.Unit;

/** In which units files write the size of a fault. */
public final class FaultUnits {
    private static final int DECIMALS = 6;
    private static final int NANO = 9;

    private FaultUnits() {}

    /** Returns the unit of sizes that have one; empty for parts of a whole and plain numbers. */
    static Optional<Unit> of(FaultSize size) {
        for (Unit unit : Unit.values()) {
            if (unit.symbol().equals(size.unit())) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    /**
     * Returns the range in words: {@code 0.3 mm to 5 mm}, or {@code 20 % to 80 %} for a part.
     *
     * @param size the sizes of a fault
     */
    public static String range(FaultSize size) {
        return text(size.least(), size) + " to " + text(size.most(), size);
    }

    /** Returns the usual size in words, empty text if the fault has no size. */
    public static String usual(FaultSize size) {
        return size.equals(FaultSize.NONE) ? "" : text(size.usual(), size);
    }

    private static String text(double number, FaultSize size) {
        if (size.unit().isEmpty()) {
            return Decimals.formatShort(100 * number, DECIMALS) + " %";
        }
        String figure = Decimals.formatShort(number, DECIMALS);
        return of(size).isPresent() ? figure + " " + size.unit() : size.unit() + " " + figure;
    }

    /** Writes a size so that the very same number is read back. */
    static Node exact(double size, FaultSize of) {
        if (of.unit().isEmpty()) {
            return Tree.text(Amounts.ofShare(size));
        }
        Optional<Unit> unit = of(of);
        return unit.isEmpty()
                ? Tree.number(size, NANO)
                : Tree.text(Amounts.ofSize(size, unit.get()));
    }
}
