package org.fandown.app.property;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.fandown.evidence.Inspection;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleReader;
import org.fandown.vehicle.WheelId;

/**
 * A random inspection as somebody would write it: figures near the printed limits of many places,
 * judged in any place on any of the example vehicles.
 *
 * @param place the place
 * @param vehicle the name of the example vehicle
 * @param seed what the figures follow from
 */
record YardSheet(String place, String vehicle, long seed) {
    /** NIST SP 811, appendix B.8: 1 psi = 6.894 757 kPa, here with the digits of its definition. */
    static final double KPA_PER_PSI = 6.894757293168361;

    /** Two texts of this place disagree on the governor and nobody has settled it. */
    private static final String DISPUTED = "CA-ON";

    static YardSheet random(Random random) {
        List<String> vehicles = List.copyOf(Examples.VEHICLES.keySet());
        return new YardSheet(
                random.nextInt(3) == 0
                        ? DISPUTED
                        : Examples.PLACES.get(random.nextInt(Examples.PLACES.size())).code(),
                vehicles.get(random.nextInt(vehicles.size())),
                random.nextLong());
    }

    /** The inspection with pressures in psi, read on instruments of the given steps. */
    Inspection read(String instruments) {
        return Examples.read(text(instruments, false));
    }

    /** The same inspection with every pressure exactly converted. */
    Inspection inKilopascals(String instruments) {
        return Examples.read(text(instruments, true));
    }

    private String text(String instruments, boolean kilopascals) {
        Random random = new Random(seed);
        StringBuilder text = new StringBuilder();
        text.append("place: ").append(place).append("\nmoment: 2026-11-24T06:00:00Z\n");
        text.append("vehicle: ../vehicles/").append(vehicle).append(".yaml\n");
        text.append("conditions: as-printed\ninstruments: ").append(instruments).append('\n');
        text.append("readings:\n");
        double cutIn = between(random, 78, 108);
        line(text, "governor-cut-in", pressure(cutIn, kilopascals));
        double cutOut = cutIn + between(random, 5, 40);
        line(text, "governor-cut-out", pressure(cutOut, kilopascals));
        line(text, "low-air-warning", pressure(between(random, 50, 80), kilopascals));
        line(text, "parking-valve-closing", pressure(between(random, 15, 50), kilopascals));
        line(text, "trailer-supply-closing", pressure(between(random, 15, 50), kilopascals));
        line(text, "tractor-protection", pressure(between(random, 15, 70), kilopascals));
        line(text, "pressure-before-driving", pressure(between(random, 85, 120), kilopascals));
        for (String loss : List.of("air-loss-applied", "air-loss-released")) {
            double start = between(random, 88, 120);
            double lost = random.nextInt(40) / 4.0;
            double minutes = 1 + random.nextInt(3);
            line(
                    text,
                    loss,
                    "{ start: %s, end: %s, time: %s min }"
                            .formatted(
                                    pressure(start, kilopascals),
                                    pressure(start - lost, kilopascals),
                                    number(minutes)));
        }
        Vehicle rig = VehicleReader.read(Examples.vehicle(vehicle));
        text.append("wheels:\n  all: {}\n");
        for (WheelId wheel : rig.wheelsWithPushRod()) {
            line(text, wheel.toString(), number(between(random, 1, 2.6)) + " in");
        }
        return text.append("parts: { all-others: ok }\n").toString();
    }

    private static void line(StringBuilder text, String key, String value) {
        text.append("  ").append(key).append(": ").append(value).append('\n');
    }

    private static double between(Random random, double least, double most) {
        double value = least + random.nextDouble() * (most - least);
        return Math.round(value * 16) / 16.0;
    }

    private static String pressure(double psi, boolean kilopascals) {
        return kilopascals
                ? String.format(Locale.ROOT, "%.9f kPa", psi * KPA_PER_PSI)
                : number(psi) + " psi";
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.4f", value);
    }
}
