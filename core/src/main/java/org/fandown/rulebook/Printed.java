package org.fandown.rulebook;

import java.util.List;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/**
 * A limit as a book prints it, often in two units that do not quite agree (3 psi beside 20 kPa in
 * one book and 21 kPa in another). A reading is compared in the unit it was entered in, with the
 * figure printed for that unit.
 *
 * @param forms the printed figures, the source's own unit first; at least one, all of one
 *     dimension, no unit twice
 */
public record Printed(List<Quantity> forms) {

    /**
     * Copies and checks the list.
     *
     * @throws IllegalArgumentException if it is empty, mixes dimensions or repeats a unit
     */
    public Printed {
        forms = List.copyOf(forms);
        if (forms.isEmpty()) {
            throw new IllegalArgumentException("A printed limit needs at least one figure.");
        }
        for (int i = 1; i < forms.size(); i++) {
            if (forms.get(i).unit().dimension() != forms.get(0).unit().dimension()) {
                throw new IllegalArgumentException(
                        forms.get(i)
                                + " is not the same kind of quantity as "
                                + forms.get(0)
                                + ".");
            }
            for (int j = 0; j < i; j++) {
                if (forms.get(i).unit() == forms.get(j).unit()) {
                    throw new IllegalArgumentException(
                            forms.get(i) + " repeats the unit of " + forms.get(j) + ".");
                }
            }
        }
    }

    /** The figure in the source's own unit. */
    public Quantity own() {
        return forms.get(0);
    }

    /**
     * The figure to compare a reading in the given unit with: as printed in that unit, or else one
     * converted from the printed figure of the same decimal family (bar from kPa, cm from mm), or
     * else from the source's own unit.
     *
     * @throws IllegalArgumentException if the unit has another dimension
     */
    public double in(Unit unit) {
        for (Quantity form : forms) {
            if (form.unit() == unit) {
                return form.value();
            }
        }
        boolean metric = unit == Unit.BAR || unit == Unit.CM || unit == Unit.METRE;
        if (metric) {
            for (Quantity form : forms) {
                if (form.unit() == Unit.KPA || form.unit() == Unit.MM) {
                    return form.valueIn(unit);
                }
            }
        }
        return own().valueIn(unit);
    }

    /** The printed figures: {@code 21 kPa (3 psi)}. */
    @Override
    public String toString() {
        if (own().unit() == Unit.EACH) {
            return Texts.number(own().value());
        }
        StringBuilder text = new StringBuilder(own().toString());
        for (int i = 1; i < forms.size(); i++) {
            text.append(i == 1 ? " (" : ", ").append(forms.get(i));
        }
        return forms.size() > 1 ? text.append(')').toString() : text.toString();
    }
}
