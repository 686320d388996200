package org.fandown.property.judgement;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/**
 * Readings and strokes of a truck as a person may note them.
 *
 * @param readings readings by the text form of their check
 * @param wheels strokes by wheel
 */
record RandomEvidence(Map<String, String> readings, Map<String, String> wheels) {

    RandomEvidence shuffled(Random random) {
        return new RandomEvidence(shuffled(readings, random), shuffled(wheels, random));
    }

    private static Map<String, String> shuffled(Map<String, String> map, Random random) {
        List<String> keys = new ArrayList<>(map.keySet());
        Collections.shuffle(keys, random);
        Map<String, String> other = new LinkedHashMap<>();
        keys.forEach(key -> other.put(key, map.getOrDefault(key, "")));
        return other;
    }

    String text() {
        return "'readings': {" + text(readings) + "}, 'wheels': {" + text(wheels) + "}";
    }

    private static String text(Map<String, String> map) {
        List<String> entries = new ArrayList<>();
        map.forEach((key, value) -> entries.add("'" + key + "': " + value));
        return String.join(", ", entries);
    }

    static Arbitrary<RandomEvidence> any() {
        Arbitrary<Integer> pressure = Arbitraries.integers().between(40, 150);
        Arbitrary<Integer> gap = Arbitraries.integers().between(1, 50);
        Arbitrary<Integer> drop = Arbitraries.integers().between(0, 8);
        Arbitrary<List<Integer>> strokes = Arbitraries.integers().between(16, 36).list().ofSize(4);
        return Combinators.combine(gap, pressure, pressure, drop, drop, strokes)
                .as(RandomEvidence::of);
    }

    private static RandomEvidence of(
            int gap, int cutOut, int low, int first, int second, List<Integer> strokes) {
        Map<String, String> readings = new LinkedHashMap<>();
        readings.put("governor-cut-in", "'" + Math.max(1, cutOut - gap) + " psi'");
        readings.put("governor-cut-out", "['" + cutOut + " psi', '" + (cutOut + first) + " psi']");
        readings.put("low-air-warning", "'" + low + " psi'");
        readings.put(
                "build-up", "{'from': '85 psi', 'to': '100 psi', 'time': '" + (100 + low) + " s'}");
        readings.put(
                "air-loss-applied",
                "{'start': '110 psi', 'end': '" + (110 - first) + " psi', 'time': '60 s'}");
        readings.put(
                "air-loss-released",
                "{'points': ["
                        + point(0, 110)
                        + ", "
                        + point(20, 110 - Math.min(first, second))
                        + ", "
                        + point(45, 110 - second)
                        + ", "
                        + point(90, 110 - first - second)
                        + "]}");
        readings.put(
                "reservoir-reserve",
                "{'before': '" + cutOut + " psi', 'after': '" + Math.min(low, cutOut) + " psi'}");
        Map<String, String> wheels = new LinkedHashMap<>();
        List<String> names = List.of("1L", "1R", "2L", "2R");
        for (int i = 0; i < names.size(); i++) {
            wheels.put(names.get(i), "{'applied': '" + stroke(strokes.get(i)) + "'}");
        }
        return new RandomEvidence(readings, wheels);
    }

    private static String point(int seconds, int psi) {
        return "{'at': '" + seconds + " s', 'gauge': '" + psi + " psi'}";
    }

    static String stroke(int sixteenths) {
        return sixteenths / 16.0 + " in";
    }
}
