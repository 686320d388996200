package org.fandown.operator;

import java.util.List;
import org.fandown.practice.Dash;
import org.fandown.units.GaugePressure;
import org.fandown.units.Num;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/**
 * Both needles as a person reads them, to whole psi.
 *
 * @param primary the primary circuit, psi
 * @param secondary the secondary circuit, psi
 */
record Needles(int primary, int secondary) {
    static Needles read(Dash dash) {
        return new Needles(whole(dash.primary()), whole(dash.secondary()));
    }

    private static int whole(GaugePressure pressure) {
        return (int) Num.round(pressure.inPsi());
    }

    int lower() {
        return Math.min(primary, secondary);
    }

    int higher() {
        return Math.max(primary, secondary);
    }

    Needles least(Needles other) {
        return new Needles(Math.min(primary, other.primary), Math.min(secondary, other.secondary));
    }

    Needles most(Needles other) {
        return new Needles(Math.max(primary, other.primary), Math.max(secondary, other.secondary));
    }

    int sum() {
        return primary + secondary;
    }

    List<Quantity> quantities() {
        return List.of(Quantity.of(primary, Unit.PSI), Quantity.of(secondary, Unit.PSI));
    }

    /** Returns them in words: {@code 92 and 95 psi}. */
    String words() {
        return primary + " and " + secondary + " psi";
    }
}
