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
            "To go back to a copy, stop the pages and put it in the folder as fandown.db."
        },
        footer = {"", "Exit codes: 0 copied, 2 bad usage, or the copy cannot be written."})
final class BackUpCommand implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @Mixin private StoreOptions storeOptions;

    @Parameters(paramLabel = "COPY.db", description = "the file to write; not there yet")
    private Path copy;

    private BackUpCommand() {}

    @Override
    public Integer call() {
        Store store = storeOptions.open(spec.commandLine());
        try {
            store.backUp(copy);
        } catch (StoreException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage(), e);
        }
        Screen screen = new Screen(spec.commandLine().getOut());
        screen.line("Records copied: " + store.records().count());
        screen.line("from " + store.place() + " into " + copy);
        screen.done();
        return ExitCode.DONE;
    }
}
