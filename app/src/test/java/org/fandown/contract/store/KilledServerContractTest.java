package org.fandown.contract.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.fandown.app.store.RecordStore;
import org.fandown.app.store.Store;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A server that is killed while many write to it has all that it had answered for, in one chain.
 */
class KilledServerContractTest {
    private static final int CLIENTS = 24;
    private static final Duration TIME = Duration.ofSeconds(8);

    @TempDir private Path folder;

    @Test
    void everything_acknowledged_is_there_and_the_chain_holds_in_a_file() throws Exception {
        Load.Outcome outcome;
        try (ServerProcess server = new ServerProcess(folder, null)) {
            outcome = new Load(server).run(CLIENTS, TIME);
        }
        try (Store store = Store.inFolder(folder)) {
            requireAll(outcome, store.records(), CLIENTS);
        }
    }

    @Test
    void everything_acknowledged_is_there_and_the_chain_holds_on_a_server() throws Exception {
        String url = TestPostgres.database();
        Load.Outcome outcome;
        try (ServerProcess server = new ServerProcess(folder, url)) {
            outcome = new Load(server).run(CLIENTS, TIME);
        }
        try (Store store = Store.at(url)) {
            requireAll(outcome, store.records(), CLIENTS);
        }
    }

    /** At most one record of each client was written without an answer, at the kill or the end. */
    static void requireAll(Load.Outcome outcome, RecordStore store, int clients) {
        assertThat(outcome.odd()).isEmpty();
        List<String> kept = outcome.kept();
        assertThat(kept).hasSizeGreaterThan(clients).doesNotHaveDuplicates();
        for (String id : kept) {
            assertThat(store.byId(id)).as(id).isPresent();
        }
        assertThat(store.check().problem()).isEmpty();
        assertThat(store.check().records()).isEqualTo(store.count());
        assertThat(store.count()).isBetween((long) kept.size(), (long) kept.size() + clients);
    }
}
