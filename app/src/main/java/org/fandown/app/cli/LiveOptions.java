package org.fandown.app.cli;

import java.nio.file.Path;
import org.fandown.app.files.DocumentFiles;
import org.fandown.app.files.LogFiles;
import org.fandown.trace.MarksReader;
import org.fandown.trace.OperatorMarks;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.QuantityFormatException;
import org.fandown.units.Unit;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Options of {@code trace} about a log that is still being written. */
final class LiveOptions {
    private static final double LEAST_QUIET = 0.2;
    private static final double MOST_QUIET = 86_400;

    @Option(
            names = "--follow",
            description =
                    "go on reading while the log grows, and say at once what is recognised, what is"
                            + " missing and when an air loss is decided; ends at Ctrl-C, or at the"
                            + " end of standard input")
    private boolean follow;

    @Option(
            names = "--quiet-for",
            paramLabel = "TIME",
            description = "with --follow: end when the log has not grown for so long, such as 30 s")
    private @Nullable String quietFor;

    @Option(
            names = "--vin",
            description =
                    "read the vehicle identification number from a candump log and show it; without"
                            + " this it is never shown")
    private boolean vin;

    @Option(
            names = "--marks",
            paramLabel = "FILE",
            description =
                    "what a person saw and did that no signal tells (YAML or JSON, see"
                            + " docs/formats.md); with --follow, - takes words typed while the log"
                            + " grows, such as low-air-warning")
    private @Nullable String marks;

    boolean follow() {
        return follow;
    }

    /** Whether marks are typed while the log is followed. */
    boolean marksTyped() {
        return LogFiles.STANDARD_INPUT.equals(marks);
    }

    /** The marks of a file; none without one. */
    OperatorMarks marks(CommandLine command, String log) {
        if (marks == null) {
            return OperatorMarks.NONE;
        }
        if (!marksTyped()) {
            return MarksReader.read(DocumentFiles.read(Path.of(marks)));
        }
        if (!follow || log.equals(LogFiles.STANDARD_INPUT)) {
            throw new ParameterException(
                    command,
                    "--marks - takes words typed on standard input, so it goes with --follow and a"
                            + " log that is a file.");
        }
        return OperatorMarks.NONE;
    }

    boolean vin() {
        return vin;
    }

    /** Seconds without a new byte after which following ends; infinite for never. */
    double quietFor(CommandLine command) {
        if (quietFor == null) {
            return Double.POSITIVE_INFINITY;
        }
        if (!follow) {
            throw new ParameterException(command, "--quiet-for goes with --follow.");
        }
        try {
            double seconds = Quantity.parse(quietFor, Dimension.TIME).valueIn(Unit.SECOND);
            if (seconds >= LEAST_QUIET && seconds <= MOST_QUIET) {
                return seconds;
            }
        } catch (QuantityFormatException e) {
            throw new ParameterException(command, "--quiet-for: " + e.getMessage(), e);
        }
        throw new ParameterException(
                command, "--quiet-for " + quietFor + " is out of range. Allowed: 0.2 s to 24 h.");
    }
}
