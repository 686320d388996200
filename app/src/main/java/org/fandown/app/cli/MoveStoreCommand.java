package org.fandown.app.cli;

import java.util.concurrent.Callable;
import org.fandown.app.store.Store;
import org.fandown.app.store.StoreException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The verb {@code move-store}: from the folder to a PostgreSQL server. */
@Command(
        name = "move-store",
        mixinStandardHelpOptions = true,
        description = {
            "Copies all that is kept in the folder into an empty database of a PostgreSQL server,",
            "and compares every row. Stop the pages first. If anything is wrong, the database",
            "stays empty and the verb can be used again. The folder stays as it is."
        },
        footer = {"", "Exit codes: 0 moved, 2 bad usage, or it cannot be moved."})
final class MoveStoreCommand implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @Mixin private DataOption data;

    @Option(
            names = "--to",
            paramLabel = "URL",
            description =
                    "the database, jdbc:postgresql://HOST:PORT/DATABASE?user=USER&password=PASSWORD;"
                            + " default what the environment variable "
                            + StoreOptions.VARIABLE
                            + " says")
    private @Nullable String to;

    private MoveStoreCommand() {}

    @Override
    public Integer call() {
        String url = to == null ? StoreOptions.fromEnvironment() : to;
        if (url == null) {
            throw new ParameterException(
                    spec.commandLine(),
                    "Where to? Next: name a database with --to, or in the environment variable "
                            + StoreOptions.VARIABLE
                            + ".");
        }
        try (Store from = data.open(spec.commandLine());
                Store target = DataOption.open(spec.commandLine(), () -> Store.at(url))) {
            from.copyAllTo(target);
            Screen screen = new Screen(spec.commandLine().getOut());
            screen.line("Records moved: " + target.records().count());
            screen.line("from " + from.place() + " to " + target.place());
            screen.line("Next: start the pages with " + StoreOptions.VARIABLE + " set to it.");
            screen.done();
        } catch (StoreException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage(), e);
        }
        return ExitCode.DONE;
    }
}
