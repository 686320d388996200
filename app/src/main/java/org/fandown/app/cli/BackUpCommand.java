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

/** The verb {@code back-up}: a whole copy of the records, also while the pages are in use. */
@Command(
        name = "back-up",
        mixinStandardHelpOptions = true,
        description = {
            "Copies all records into a file, also while the pages are in use.",
            "To go back to a copy, use 'fandown restore'."
        },
        footer = {
            "",
            "Exit codes: 0 copied, 2 bad usage, the copy cannot be written, or something is broken."
        })
final class BackUpCommand implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @Mixin private StoreOptions storeOptions;

    @Parameters(paramLabel = "COPY.db", description = "the file to write; not there yet")
    private Path copy;

    private BackUpCommand() {}

    @Override
    public Integer call() {
        try (Store store = storeOptions.open(spec.commandLine())) {
            store.backUp(copy);
            Screen screen = new Screen(spec.commandLine().getOut());
            screen.line("Records copied: " + store.records().count());
            screen.line("from " + store.place() + " into " + copy);
            screen.done();
        } catch (StoreException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage(), e);
        }
        return ExitCode.DONE;
    }
}
