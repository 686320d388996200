package org.fandown.practice;

import org.fandown.document.MapNode;
import org.fandown.document.Names;
import org.fandown.document.Tree;
import org.fandown.units.Num;

/** Writes what became of a run as a document, for programs. */
public final class RunDocument {
    private static final int HEX_DIGITS = 16;
    private static final String HEX = "0123456789abcdef";

    private RunDocument() {}

    /**
     * Writes a run.
     *
     * @param truck the truck at the end of the run
     * @param script what was done with it
     */
    public static MapNode of(PracticeTruck truck, Script script) {
        Scenario scenario = truck.scenario();
        Tree.MapBuilder map =
                Tree.map()
                        .put("format", "fandown-drive/1")
                        .put("simulated", true)
                        .put("scenario", scenario.title());
        scenario.place().ifPresent(place -> map.put("place", place.code()));
        if (!script.title().isEmpty()) {
            map.put("script", script.title());
        }
        return map.put("vehicle", scenario.vehicle().name())
                .put("seed", scenario.seed())
                .put("seconds", seconds(truck.time()))
                .put("fingerprint", hex(truck.fingerprint()))
                .put("events", events(truck))
                .put("readings", readings(truck))
                .build();
    }

    /** A time without the noise of its last bits. */
    private static double seconds(double time) {
        return Num.roundTo(time, 2);
    }

    private static Tree.ListBuilder events(PracticeTruck truck) {
        Tree.ListBuilder list = Tree.list();
        for (PracticeEvent event : truck.events()) {
            list.add(
                    Tree.map()
                            .put("seconds", seconds(event.seconds()))
                            .put("kind", Names.kebab(event.kind()))
                            .put("text", event.text()));
        }
        return list;
    }

    private static Tree.MapBuilder readings(PracticeTruck truck) {
        Tree.MapBuilder map = Tree.map();
        for (Signal signal : Signal.of(truck)) {
            String key = signal.name().replace(' ', '-');
            double value = signal.value(truck);
            if (signal.unit().isEmpty()) {
                map.put(key, value > 0);
            } else {
                map.put(
                        key,
                        Tree.map()
                                .put("value", Num.roundTo(value, signal.decimals()))
                                .put("unit", signal.unit()));
            }
        }
        return map;
    }

    /**
     * Writes a fingerprint as 16 hexadecimal digits.
     *
     * @param fingerprint any number
     */
    public static String hex(long fingerprint) {
        StringBuilder text = new StringBuilder();
        for (int i = HEX_DIGITS - 1; i >= 0; i--) {
            text.append(HEX.charAt((int) (fingerprint >>> (4 * i)) & 0xf));
        }
        return text.toString();
    }

    /** The value of a digit as {@link #hex} writes it, -1 if it is none. */
    static int digit(char c) {
        return HEX.indexOf(c);
    }
}
