package org.fandown.property.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.fandown.air.AirVehicles;
import org.fandown.trace.TestDrive;
import org.fandown.trace.TestDrive.Recorder;
import org.junit.jupiter.api.Test;

/**
 * Whole tests in the cab of vehicles drawn by lot, sound and with faults, recorded by instruments
 * of several steps, rates and noises: what is recognised is compared with what truly happened.
 *
 * <p>As part of all tests few vehicles and six recorders are tried. All recorders, with 500
 * vehicles, write the table for docs/validation.md (some 5 minutes of two processors): {@code mvn
 * -pl core test -Dtest=TraceRecognitionPropertyTest -Dfandown.trace.vehicles=500
 * -Dfandown.write=true}; then write that page, see {@code ValidationDocTest}. Other vehicles and
 * other noise: {@code -Dfandown.trace.seed=7}.
 */
class TraceRecognitionPropertyTest {
    private static final Path TABLE =
            Path.of("src/test/resources/org/fandown/property/trace/table.md");

    /** 8 kPa, the step of a network's air supply pressure, psi. */
    private static final double KPA_8 = 1.16030;

    private static final int FEW = 40;
    private static final long SEED = 20261125;

    /** So many standard deviations of a count by chance are allowed for. */
    private static final double SLACK = 3.5;

    /** Of all intervals that hold the truth in 95 of 100 cases. */
    private static final double LEAST_INSIDE = 0.93;

    private static final double MOST_INSIDE = 0.97;
    private static final double CUTS_RIGHT = 0.99;
    private static final double NOT_DONE = 0.005;

    @Test
    void what_is_recognised_is_what_was_done() throws IOException {
        int vehicles = Integer.getInteger("fandown.trace.vehicles", FEW);
        long seed = Long.getLong("fandown.trace.seed", SEED);
        boolean all = vehicles > FEW;

        List<TraceTally> tallies = tallies(all ? recorders() : someRecorders(), vehicles, seed);

        TraceTally sum = new TraceTally(tallies.get(0).recorder);
        tallies.forEach(sum::add);
        if (all) {
            String table = table(tallies, sum, seed);
            System.out.println(table);
            if (Boolean.getBoolean("fandown.write")) {
                Files.createDirectories(TABLE.getParent());
                Files.writeString(TABLE, table);
            }
        }
        assertThat((double) sum.lossesInside)
                .as("losses inside their interval, of " + sum.losses)
                .isBetween(least(sum.losses, LEAST_INSIDE), most(sum.losses, MOST_INSIDE));
        assertThat((double) sum.cutsRight)
                .as("cut-outs and cut-ins right, of " + sum.cuts)
                .isGreaterThanOrEqualTo(least(sum.cuts, CUTS_RIGHT));
        assertThat((double) sum.wrong)
                .as("recognised and not done, of " + sum.recognised)
                .isLessThanOrEqualTo(most(sum.recognised, NOT_DONE));
        assertThat(sum.losses).isGreaterThan(sum.drives);
        assertThat(sum.cutOutsFound).isGreaterThan(sum.cutOutsDone * 3 / 4);
    }

    /** In this drive a safety valve opens and shuts at 90 psi fifty times. */
    @Test
    void what_blows_off_over_and_over_is_no_governor() {
        TraceTally one = new TraceTally(new Recorder(1, 10, 0.05));

        one.count(TestDrive.of(AirVehicles.all(), 467), 8_414);

        assertThat(one.recognised).isGreaterThan(5);
        assertThat(one.wrong).isLessThan(5);
    }

    private static double least(int all, double part) {
        return all * part - SLACK * Math.sqrt(all * part * (1 - part));
    }

    private static double most(int all, double part) {
        return all * part + SLACK * Math.sqrt(all * part * (1 - part));
    }

    private static List<Recorder> recorders() {
        List<Recorder> all = new ArrayList<>();
        for (double step : new double[] {0.1, 1, KPA_8}) {
            for (double rate : new double[] {1, 10, 100}) {
                for (double noise : new double[] {0.05, 0.3}) {
                    all.add(new Recorder(step, rate, noise));
                }
            }
        }
        return all;
    }

    private static List<Recorder> someRecorders() {
        return List.of(
                new Recorder(0.1, 1, 0.05),
                new Recorder(0.1, 10, 0.3),
                new Recorder(1, 1, 0.3),
                new Recorder(1, 10, 0.05),
                new Recorder(KPA_8, 1, 0.05),
                new Recorder(KPA_8, 10, 0.3));
    }

    /** Each vehicle is simulated once and recorded by all. */
    private static List<TraceTally> tallies(List<Recorder> recorders, int vehicles, long seed) {
        List<TraceTally> sums = recorders.stream().map(TraceTally::new).toList();
        IntStream.range(0, vehicles)
                .parallel()
                .forEach(
                        i -> {
                            TestDrive drive = TestDrive.of(AirVehicles.all(), seed + i);
                            for (int k = 0; k < recorders.size(); k++) {
                                TraceTally one = new TraceTally(recorders.get(k));
                                one.count(drive, (seed + i) * recorders.size() + k);
                                synchronized (sums) {
                                    sums.get(k).add(one);
                                }
                            }
                        });
        return sums;
    }

    private static String table(List<TraceTally> tallies, TraceTally sum, long seed) {
        StringBuilder table = new StringBuilder();
        table.append(
                "| step, psi | a second | noise, psi | cut-outs and cut-ins within a step and 1 psi |"
                        + " losses inside their interval | above it, below it | mean width, psi/min |"
                        + " recognised and not done | cut-outs found |\n"
                        + "| --- | --- | --- | --- | --- | --- | --- | --- | --- |\n");
        for (TraceTally each : tallies) {
            Recorder by = each.recorder;
            table.append(
                    row(
                            String.format(
                                    Locale.ROOT,
                                    "%s | %.0f | %s",
                                    by.step() == KPA_8 ? "1.16 (8 kPa)" : by.step(),
                                    by.rate(),
                                    by.noise()),
                            each));
        }
        table.append(row("all | | ", sum));
        return table.append(
                        String.format(
                                Locale.ROOT,
                                "%n%d vehicles drawn by lot from seed %d, each recorded by all.%n",
                                tallies.get(0).drives,
                                seed))
                .toString();
    }

    private static String row(String head, TraceTally of) {
        return String.format(
                Locale.ROOT,
                "| %s | %s | %s | %d, %d | %.2f | %s | %s |%n",
                head,
                share(of.cutsRight, of.cuts, 1),
                share(of.lossesInside, of.losses, 1),
                of.lossesAbove,
                of.lossesBelow,
                of.widths / of.losses,
                share(of.wrong, of.recognised, 2),
                share(of.cutOutsFound, of.cutOutsDone, 1));
    }

    private static String share(int some, int all, int decimals) {
        return String.format(
                Locale.ROOT, "%d of %d (%." + decimals + "f %%)", some, all, 100.0 * some / all);
    }
}
