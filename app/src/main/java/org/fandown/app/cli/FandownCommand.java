package org.fandown.app.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command {@code fandown}, under which every verb is a subcommand. */
@Command(
        name = "fandown",
        mixinStandardHelpOptions = true,
        version = "fandown 0.1.0-SNAPSHOT",
        description = "Proves whether an air-braked vehicle is safe to move.",
        subcommands = {})
public final class FandownCommand implements Runnable {
    @Spec private CommandSpec spec;

    private FandownCommand() {}

    /** Returns a new command line, ready to execute. */
    public static CommandLine commandLine() {
        return new CommandLine(new FandownCommand());
    }

    /** Without a verb, prints the help. */
    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
