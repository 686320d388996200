package org.fandown.app.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.fandown.app.store.Store;
import org.fandown.app.store.StoreException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb {@code restore}: takes a copy into an empty store. */
@Command(
        name = "restore",
        mixinStandardHelpOptions = true,
        description = {
            "Takes all of a copy that 'fandown back-up' wrote into a store that is empty: that of a",
            "folder, or of a PostgreSQL server. Every row is compared; if anything is wrong,",
            "the store stays empty."
        },
        footer = {"", "Exit codes: 0 restored, 2 bad usage, or the copy cannot be taken."})
final class RestoreCommand implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @Mixin private StoreOptions storeOptions;

    @Parameters(paramLabel = "COPY.db", description = "the copy; it stays as it is")
    private Path copy;

    private RestoreCommand() {}

    @Override
    public Integer call() {
        try (Store store = storeOptions.open(spec.commandLine())) {
            store.restore(copy);
            Screen screen = new Screen(spec.commandLine().getOut());
            screen.line("Records restored: " + store.records().count());
            screen.line("from " + copy + " into " + store.place());
            screen.done();
        } catch (StoreException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage(), e);
        }
        return ExitCode.DONE;
    }
}
