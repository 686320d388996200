package org.fandown.app.cli;

import java.util.concurrent.Callable;
import org.fandown.app.store.Store;
import org.fandown.app.store.StoreCheck;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The verb {@code check-store}: whether all that is kept is as it was kept. */
@Command(
        name = "check-store",
        mixinStandardHelpOptions = true,
        description = {
            "Goes through all records and seals, and says what was altered, left out or put in",
            "first. Note the last seal it prints somewhere else: with it can be told later",
            "that no record up to it is missing."
        },
        footer = {
            "",
            "Exit codes: 0 all is as it was kept, 1 something is broken, 2 bad usage or the store"
                    + " cannot be opened."
        })
final class CheckStoreCommand implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @Mixin private StoreOptions storeOptions;

    @Option(
            names = "--noted",
            paramLabel = "SEAL",
            description = "the last seal of an earlier check, which has to be there")
    private @Nullable String noted;

    private CheckStoreCommand() {}

    @Override
    public Integer call() {
        try (Store store = storeOptions.open(spec.commandLine())) {
            StoreCheck check = store.records().check();
            Screen screen = new Screen(spec.commandLine().getOut());
            screen.line("Store: " + store.place());
            screen.line("Records in order: " + check.records());
            if (!check.end().isEmpty()) {
                screen.line("Last seal: " + check.end());
            }
            boolean sound = tell(screen, check, store);
            screen.done();
            return sound ? ExitCode.DONE : ExitCode.BROKEN;
        }
    }

    private boolean tell(Screen screen, StoreCheck check, Store store) {
        if (check.problem().isPresent()) {
            screen.wrapped("", "Broken. " + check.problem().get());
            screen.wrapped("", "Next: keep a copy of it as it is, and go back to an earlier one.");
            return false;
        }
        if (noted != null && !store.records().hasSeal(noted)) {
            screen.wrapped(
                    "",
                    "Broken. The seal that was noted is not there: the newest records were cut off,"
                            + " or it is of another store.");
            return false;
        }
        screen.line("All is as it was kept.");
        return true;
    }
}
