package org.fandown.vehicle;

import java.util.List;
import java.util.function.Supplier;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;

/** Turns the refusal of a record into the documented exception at the right place of the file. */
final class Guard {
    private Guard() {}

    /**
     * Makes a value.
     *
     * @param maker makes it from what was read
     * @param where the maps that were read, the most particular first; the refusal points to the
     *     first of them that has the key, else to the last
     */
    static <T> T at(Supplier<T> maker, Fields... where) {
        try {
            return maker.get();
        } catch (ImpossibleVehicleException e) {
            throw refusal(e, List.of(where));
        }
    }

    /** Makes a value of the text of one key, to which a refusal points whatever it names. */
    static <T> T on(String key, Supplier<T> maker, Fields where) {
        try {
            return maker.get();
        } catch (ImpossibleVehicleException e) {
            throw where.refuse(key, e.problem(), e.allowed(), e.nextStep());
        }
    }

    static void check(Runnable check, Fields... where) {
        at(
                () -> {
                    check.run();
                    return true;
                },
                where);
    }

    private static DocumentException refusal(ImpossibleVehicleException e, List<Fields> where) {
        Fields place = where.get(where.size() - 1);
        for (Fields fields : where) {
            if (fields.has(e.key())) {
                place = fields;
                break;
            }
        }
        return place.refuse(e.key(), e.problem(), e.allowed(), e.nextStep());
    }
}
