package org.fandown.app.cli;

import java.io.PrintWriter;
import java.util.Objects;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/**
 * The command {@code fandown}.
 *
 * <p>Each verb is a subcommand: a class of this package with {@link Command}, listed below.
 */
@Command(
        name = "fandown",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        synopsisSubcommandLabel = "VERB",
        description = {
            "Proves whether an air-braked vehicle is safe to move.",
            "Without a verb, starts the pages on this machine, as 'fandown serve' does."
        },
        subcommands = {
            ServeCommand.class,
            BackUpCommand.class,
            RestoreCommand.class,
            MoveStoreCommand.class,
            CheckStoreCommand.class,
            AccountCommand.class,
            JudgeCommand.class,
            VerifyCommand.class,
            RulesCommand.class,
            PlanCommand.class,
            DriveCommand.class,
            TraceCommand.class
        })
public final class FandownCommand implements Callable<Integer> {
    @Spec private CommandSpec spec;

    private FandownCommand() {}

    /**
     * Runs one command with standard output and standard error.
     *
     * @param args the verb, its options and its files
     * @return what to end with, see {@link ExitCode}
     */
    public static int run(String... args) {
        return Ending.with(commandLine().execute(args));
    }

    /**
     * Runs one command and writes to the given places.
     *
     * @param out where results go
     * @param err where problems go
     * @param args the verb, its options and its files
     * @return what to end with, see {@link ExitCode}
     */
    public static int run(PrintWriter out, PrintWriter err, String... args) {
        return commandLine().setOut(out).setErr(err).execute(args);
    }

    private static CommandLine commandLine() {
        return new CommandLine(new FandownCommand())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler(Problems::badUsage)
                .setExecutionExceptionHandler(
                        (failure, command, parsed) -> Problems.report(failure, command));
    }

    /** Without a verb, starts the pages: the main thing people come for. */
    @Override
    public Integer call() {
        return Objects.requireNonNull(spec.subcommands().get("serve")).execute();
    }
}
