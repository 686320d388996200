package org.fandown.app.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import org.fandown.app.files.DocumentFiles;
import org.fandown.app.files.WholeFile;
import org.fandown.check.PlaceCode;
import org.fandown.document.Json;
import org.fandown.practice.Run;
import org.fandown.practice.RunReader;
import org.fandown.practice.RunWriter;
import org.fandown.referee.Marks;
import org.fandown.referee.MarksDocument;
import org.fandown.referee.Referee;
import org.fandown.referee.Sheet;
import org.fandown.referee.SheetReader;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Options of {@code drive} about storing a run and marking it. */
final class MarkOptions {
    @Mixin private PackOptions packOptions;

    @Option(
            names = "--mark",
            description = "mark the run by the rules of its place, as an examiner would")
    private boolean mark;

    @Option(
            names = "--sheet",
            paramLabel = "SHEET.yaml",
            description = "with --mark: a marking sheet of your own; default ours")
    private @Nullable Path sheet;

    @Option(
            names = "--place",
            paramLabel = "CODE",
            description = "with --mark: ISO 3166 code such as CA-BC; default that of the scenario")
    private @Nullable String place;

    @Option(
            names = "--on",
            paramLabel = "DATE",
            description = "with --mark: the day, such as 2026-11-25; default today")
    private @Nullable String day;

    @Option(
            names = "--run",
            paramLabel = "OUT.json",
            description = "store the run, so that it can be replayed")
    private @Nullable Path store;

    @Option(
            names = "--replay",
            paramLabel = "RUN.json",
            description = "with --mark: mark a stored run, without scenario and script")
    private @Nullable Path replay;

    boolean marks() {
        return mark;
    }

    boolean replays() {
        return replay != null;
    }

    /** Says at once what does not go together. */
    void requireSense(CommandLine command, boolean drives) {
        if (!mark && (sheet != null || place != null || day != null || replay != null)) {
            throw new ParameterException(
                    command, "--sheet, --place, --on and --replay go with --mark.");
        }
        if (replay != null && (drives || store != null)) {
            throw new ParameterException(
                    command,
                    "--replay takes a stored run; leave SCENARIO, --script, --out, --plot and --run"
                            + " out.");
        }
    }

    /** Reads what marking takes before time is spent on driving. */
    Sheet sheet() {
        return sheet == null ? Sheet.OURS : SheetReader.read(DocumentFiles.read(sheet));
    }

    Run stored() {
        return RunReader.read(DocumentFiles.read(java.util.Objects.requireNonNull(replay)));
    }

    void store(Run run) {
        if (store != null) {
            String text = Json.write(RunWriter.write(run)) + "\n";
            WholeFile.write("run", store, text.getBytes(StandardCharsets.UTF_8));
        }
    }

    /** The place to mark by, or a refusal that says where to name it. */
    PlaceCode place(org.fandown.practice.Scenario scenario, CommandLine command) {
        if (place != null) {
            return PackOptions.place(place, command);
        }
        return scenario.place()
                .orElseThrow(
                        () ->
                                new ParameterException(
                                        command,
                                        "The scenario names no place to mark by. Next: add"
                                                + " --place CODE, such as --place CA-BC."));
    }

    /** Marks a run, prints the sheet, and returns what the command ends with. */
    int mark(Run run, Sheet by, boolean json, CommandLine command) {
        PlaceCode at = place(run.scenario(), command);
        LocalDate on = PackOptions.day(day, command);
        var rules =
                packOptions
                        .rulebook(packOptions.packs(), at, command)
                        .inForce(at, run.scenario().vehicle(), on);
        Marks marks = Referee.mark(run, rules, by);
        if (!marks.replayed()) {
            command.getErr()
                    .println(
                            "fandown: the run does not replay to the same bits; it was made by"
                                    + " another version of the program, or changed. The marks are"
                                    + " those of what was replayed.");
            command.getErr().flush();
        }
        PrintWriter out = command.getOut();
        if (json) {
            out.println(Json.write(MarksDocument.of(marks)));
            out.flush();
        } else {
            new MarksText(marks, new Screen(out)).print();
        }
        return marks.passed() ? ExitCode.DONE : ExitCode.NOT_PASSED;
    }
}
