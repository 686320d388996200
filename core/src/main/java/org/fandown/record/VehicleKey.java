package org.fandown.record;

import java.util.ArrayList;
import java.util.List;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.Report;

/** What tells the vehicles of a site apart: plates, or the vehicle's name where no plate is. */
public final class VehicleKey {
    private VehicleKey() {}

    /**
     * The key of the chain that an inspection belongs to: the plate of the powered unit, or else
     * the name of the vehicle.
     *
     * @param inspection the inspection
     * @return letters and digits of it in upper case
     */
    public static String of(Inspection inspection) {
        return plain(
                inspection
                        .report()
                        .entry(Report.Entry.PLATE)
                        .filter(plate -> !plain(plate).isEmpty())
                        .orElse(inspection.vehicle().name()));
    }

    /**
     * All keys under which something may be wrong with what was inspected: that of its chain, and
     * the plates of its trailers, which other vehicles tow on other days.
     */
    public static List<String> all(Inspection inspection) {
        List<String> keys = new ArrayList<>();
        keys.add(of(inspection));
        String trailers = inspection.report().entry(Report.Entry.TRAILER_PLATES).orElse("");
        for (String plate : trailers.split("[,;/]", -1)) {
            String key = plain(plate);
            if (!key.isEmpty() && !keys.contains(key)) {
                keys.add(key);
            }
        }
        return keys;
    }

    /** Letters and digits alone, in upper case, so that {@code fd-118} is {@code FD 118}. */
    public static String plain(String text) {
        StringBuilder plain = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.isLetterOrDigit(c)) {
                plain.append(Character.toUpperCase(c));
            }
        }
        return plain.toString();
    }
}
