package org.fandown.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fandown.air.AirSetup;
import org.fandown.air.Fault;
import org.fandown.air.FaultGroup;
import org.fandown.air.FaultSize;
import org.fandown.air.UsualFaults;
import org.fandown.practice.Procedures.Named;
import org.fandown.units.Decimals;
import org.fandown.vehicle.Vehicle;
import org.junit.jupiter.api.Test;

/**
 * The tables of {@code docs/faults.md} are those of the code. Run with the system property {@code
 * fandown.write-docs} set to {@code true} to try every check on every fault and write them anew;
 * else the column of the checks that show a fault besides is taken as it stands.
 */
class FaultDocumentTest {
    private static final Path FAULTS = Path.of("..", "docs", "faults.md");
    private static final String BEGIN = "<!-- faults -->\n";
    private static final String END = "<!-- end of faults -->\n";
    private static final boolean WRITES = Boolean.getBoolean("fandown.write-docs");

    private final Map<String, List<Named>> passed = new LinkedHashMap<>();

    @Test
    void the_faults_and_the_checks_that_find_them_are_listed() throws IOException {
        String text = Files.readString(FAULTS);
        int from = text.indexOf(BEGIN) + BEGIN.length();
        int to = text.indexOf(END);
        assertThat(to).as("marks in %s", FAULTS).isGreaterThanOrEqualTo(from);
        if (WRITES) {
            Files.writeString(FAULTS, text.substring(0, from) + tables() + text.substring(to));
        } else {
            assertThat(firstColumns(text.substring(from, to))).isEqualTo(firstColumns(tables()));
        }
    }

    /** All but the last column of each row. */
    private static String firstColumns(String tables) {
        return tables.replaceAll("(?m)^(\\|.*\\|)[^|]*\\|$", "$1");
    }

    private String tables() {
        StringBuilder all = new StringBuilder();
        for (FaultGroup group : FaultGroup.values()) {
            all.append("\n### ").append(group.title()).append("\n\n");
            all.append(
                    "| fault | what is wrong | size | shows | meant to find it | shows it too |\n");
            all.append("|---|---|---|---|---|---|\n");
            for (Fault fault : Fault.values()) {
                if (fault.group() == group) {
                    all.append(row(fault));
                }
            }
        }
        return all.append('\n').toString();
    }

    private String row(Fault fault) {
        String where =
                fault.atWheel() ? " (at a wheel)" : fault.atUnit() ? " (at a towed unit)" : "";
        return "| `"
                + fault.id()
                + "` | "
                + fault.title()
                + where
                + " | "
                + size(fault.size())
                + " | "
                + fault.shows()
                + " | "
                + names(Procedures.meant(fault))
                + " | "
                + (WRITES ? names(besides(fault)) : "")
                + " |\n";
    }

    private static String names(List<Named> procedures) {
        return String.join(", ", procedures.stream().map(Named::name).toList());
    }

    /** The procedures that the sound vehicle passes and the faulty one does not. */
    private List<Named> besides(Fault fault) {
        Vehicle vehicle = UsualFaults.vehicle(fault);
        Trial faulty = new Trial(vehicle, UsualFaults.of(fault).in(AirSetup.SOUND));
        List<Named> besides =
                new ArrayList<>(
                        passed.computeIfAbsent(
                                vehicle.name(),
                                name -> passing(new Trial(vehicle, AirSetup.SOUND))));
        besides.removeAll(passing(faulty));
        List<String> meant = Procedures.meant(fault).stream().map(Named::name).toList();
        besides.removeIf(each -> meant.contains(each.name()));
        return besides;
    }

    private static List<Named> passing(Trial trial) {
        return Procedures.all().stream().filter(p -> p.procedure().of(trial).met()).toList();
    }

    private static String size(FaultSize size) {
        if (size.equals(FaultSize.NONE)) {
            return "";
        }
        String range = number(size.least()) + " to " + number(size.most());
        String unit = size.unit().isEmpty() ? " (part)" : " " + size.unit();
        return range + unit + ", usual " + number(size.usual());
    }

    private static String number(double value) {
        return Decimals.formatShort(value, 4);
    }
}
