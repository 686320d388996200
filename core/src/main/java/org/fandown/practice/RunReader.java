package org.fandown.practice;

import java.util.ArrayList;
import java.util.List;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Node;
import org.fandown.evidence.VehicleSource;

/** Reads a run that {@link RunWriter} wrote, strictly. */
public final class RunReader {
    private static final int MOST_TICKS = 4_320_000;
    private static final int HEX_DIGITS = 16;
    private static final String AGAIN = "store the run again, or make it again";

    private RunReader() {}

    /**
     * Reads one run.
     *
     * @throws DocumentException if the document is not a run
     */
    public static Run read(Node document) {
        Fields fields = Fields.of(document);
        requireFormat(fields);
        if (!fields.truth(RunKeys.SIMULATED)) {
            throw fields.refuse(
                    RunKeys.SIMULATED,
                    "a run is always made on a simulated vehicle",
                    "true",
                    "record a real inspection in an inspection file");
        }
        String title = fields.optionalText(RunKeys.TITLE).orElse("");
        Scenario scenario =
                new ScenarioReader(VehicleSource.NONE).read(fields.node(RunKeys.SCENARIO));
        int ticks = fields.integer(RunKeys.TICKS, 0, MOST_TICKS);
        List<RunEntry> entries = entries(fields, new ScriptReader(scenario.vehicle()), ticks);
        long fingerprint = fingerprint(fields);
        fields.end();
        return new Run(title, scenario, entries, ticks, fingerprint);
    }

    private static void requireFormat(Fields fields) {
        if (!fields.text(RunKeys.FORMAT).equals(RunKeys.FORMAT_NAME)) {
            throw fields.refuse(
                    RunKeys.FORMAT,
                    "this is not a stored run that the program knows",
                    RunKeys.FORMAT_NAME,
                    "give a file that 'fandown drive --run' wrote");
        }
    }

    private static List<RunEntry> entries(Fields fields, ScriptReader reader, int ticks) {
        List<RunEntry> entries = new ArrayList<>();
        int last = 0;
        for (Node item : fields.list(RunKeys.ENTRIES)) {
            Fields entry = Fields.of(item);
            int tick = entry.integer(RunKeys.TICK, 0, MOST_TICKS);
            if (tick < last || tick > ticks) {
                throw entry.refuse(
                        RunKeys.TICK,
                        "the ticks of a run do not fall, nor pass its end",
                        last + " to " + ticks,
                        AGAIN);
            }
            last = tick;
            entries.add(entry(tick, reader.thing(entry.fields(RunKeys.STEP))));
            entry.end();
        }
        return entries;
    }

    private static RunEntry entry(int tick, ScriptStep step) {
        if (step instanceof ScriptStep.Do act) {
            return new RunEntry.Act(tick, act.action());
        }
        if (step instanceof ScriptStep.State said) {
            return new RunEntry.Stated(tick, said.statement());
        }
        return new RunEntry.GaveUp(tick, (ScriptStep.Wait) step);
    }

    private static long fingerprint(Fields fields) {
        String text = fields.text(RunKeys.FINGERPRINT);
        long number = 0;
        boolean good = text.length() == HEX_DIGITS;
        for (int i = 0; good && i < HEX_DIGITS; i++) {
            int digit = RunDocument.digit(text.charAt(i));
            good = digit >= 0;
            number = number << 4 | (digit & 0xf);
        }
        if (!good) {
            throw fields.refuse(
                    RunKeys.FINGERPRINT,
                    "this is not a fingerprint",
                    HEX_DIGITS + " hexadecimal digits",
                    AGAIN);
        }
        return number;
    }
}
