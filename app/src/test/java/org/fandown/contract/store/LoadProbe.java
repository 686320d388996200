package org.fandown.contract.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.fandown.app.store.Store;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Prints what a server bears with many clients and a kill in the middle; see bench/load. */
class LoadProbe {
    private static final int CLIENTS = Integer.getInteger("fandown.clients", 200);
    private static final int SECONDS = Integer.getInteger("fandown.seconds", 60);

    @TempDir private Path folder;

    @Test
    void sqlite() throws Exception {
        Load.Outcome outcome;
        try (ServerProcess server = new ServerProcess(folder, null)) {
            outcome = new Load(server).run(CLIENTS, Duration.ofSeconds(SECONDS));
        }
        try (Store store = Store.inFolder(folder)) {
            report("SQLite", outcome, store);
        }
    }

    @Test
    void postgres() throws Exception {
        String url = TestPostgres.database();
        Load.Outcome outcome;
        try (ServerProcess server = new ServerProcess(folder, url)) {
            outcome = new Load(server).run(CLIENTS, Duration.ofSeconds(SECONDS));
        }
        try (Store store = Store.at(url)) {
            report("PostgreSQL", outcome, store);
        }
    }

    private static void report(String name, Load.Outcome outcome, Store store) throws Exception {
        long began = System.nanoTime();
        KilledServerContractTest.requireAll(outcome, store.records(), CLIENTS);
        long looked = (System.nanoTime() - began) / 1_000_000;
        System.out.println(
                name
                        + ": "
                        + CLIENTS
                        + " clients, "
                        + SECONDS
                        + " s; acknowledged "
                        + outcome.kept().size()
                        + ", all there, chain of "
                        + store.records().count()
                        + " sound; answers ms: half within "
                        + outcome.within(50)
                        + ", 99 of 100 within "
                        + outcome.within(99)
                        + ", longest "
                        + outcome.within(100)
                        + "; away after the kill for "
                        + outcome.down()
                        + " ms; looked through in "
                        + looked
                        + " ms; load "
                        + Files.readString(Path.of("/proc/loadavg")).strip());
    }
}
