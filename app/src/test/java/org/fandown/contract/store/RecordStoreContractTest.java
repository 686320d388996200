package org.fandown.contract.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.fandown.app.store.Kept;
import org.fandown.app.store.RecordHead;
import org.fandown.app.store.RecordStore;
import org.fandown.app.store.StoreException;
import org.fandown.app.store.StoreFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What every store of records has to do, against the real embedded database. */
class RecordStoreContractTest {
    @TempDir private Path folder;

    private static RecordHead head(String id, String made, String vehicle, String words) {
        return new RecordHead(id, "inspection", made, made, "CA-ON", vehicle, "fit to move", words);
    }

    @Test
    void record_is_kept_once_however_often_it_is_sent() {
        RecordStore store = StoreFile.open(folder).records();
        RecordHead head = head("a", "2026-11-30T06:00:00Z", "Truck 4", "XYD 417");
        assertThat(store.keep(head, "{\"a\":1}")).isEqualTo(Kept.NEW);
        assertThat(store.keep(head, "{\"a\":1}")).isEqualTo(Kept.BEFORE);
        assertThat(store.keep(head, "{\"a\":2}")).isEqualTo(Kept.CONFLICT);
        assertThat(store.count()).isEqualTo(1);
        assertThat(store.byId("a").orElseThrow().content()).isEqualTo("{\"a\":1}");
    }

    @Test
    void record_is_found_by_every_word_of_its_head_newest_first() {
        RecordStore store = StoreFile.open(folder).records();
        store.keep(head("a", "2026-11-28T06:00:00Z", "Truck 4", "XYD 417 Ines"), "1");
        store.keep(head("b", "2026-11-29T06:00:00Z", "Bus 208", "100% wool_"), "2");
        store.keep(head("c", "2026-11-30T06:00:00Z", "Truck 5", "XYD 418"), "3");
        assertThat(ids(store, List.of())).containsExactly("c", "b", "a");
        assertThat(ids(store, List.of("truck", "xyd"))).containsExactly("c", "a");
        assertThat(ids(store, List.of("417", "ines"))).containsExactly("a");
        assertThat(ids(store, List.of("0%"))).containsExactly("b");
        assertThat(ids(store, List.of("l_"))).containsExactly("b");
        assertThat(ids(store, List.of("k_4"))).isEmpty();
        assertThat(ids(store, List.of("' or 1=1 --"))).isEmpty();
    }

    private static List<String> ids(RecordStore store, List<String> words) {
        return store.find(words, 10).stream().map(RecordHead::id).toList();
    }

    @Test
    void kept_record_can_be_neither_changed_nor_deleted() throws Exception {
        StoreFile file = StoreFile.open(folder);
        file.records().keep(head("a", "2026-11-28T06:00:00Z", "Truck 4", ""), "1");
        try (Connection by = DriverManager.getConnection("jdbc:sqlite:" + file.file());
                var statement = by.createStatement()) {
            assertThatThrownBy(() -> statement.execute("update record set content = '2'"))
                    .hasMessageContaining("never changed");
            assertThatThrownBy(() -> statement.execute("delete from record"))
                    .hasMessageContaining("never deleted");
        }
        assertThat(StoreFile.open(folder).records().byId("a").orElseThrow().content())
                .isEqualTo("1");
    }

    @Test
    void many_at_once_lose_nothing() throws Exception {
        RecordStore store = StoreFile.open(folder).records();
        ExecutorService writers = Executors.newFixedThreadPool(8);
        List<Callable<Kept>> tasks =
                IntStream.range(0, 200)
                        .mapToObj(
                                i ->
                                        (Callable<Kept>)
                                                () ->
                                                        store.keep(
                                                                head(
                                                                        "r" + i % 100,
                                                                        "2026-11-28T06:00:00Z",
                                                                        "T",
                                                                        ""),
                                                                "x" + i % 100))
                        .toList();
        List<Future<Kept>> answers = writers.invokeAll(tasks);
        writers.shutdown();
        int fresh = 0;
        for (Future<Kept> answer : answers) {
            fresh += answer.get() == Kept.NEW ? 1 : 0;
        }
        assertThat(fresh).isEqualTo(100);
        assertThat(store.count()).isEqualTo(100);
    }

    @Test
    void copy_made_while_in_use_is_whole_and_never_overwrites() {
        StoreFile file = StoreFile.open(folder);
        file.records().keep(head("a", "2026-11-28T06:00:00Z", "Truck 4", ""), "1");
        Path copies = folder.resolve("copies");
        assertThat(copies.toFile().mkdir()).isTrue();
        Path copy = copies.resolve("fandown.db");
        file.backUp(copy);
        assertThat(Files.exists(copy)).isTrue();
        assertThat(StoreFile.open(copies).records().byId("a")).isPresent();
        assertThatThrownBy(() -> file.backUp(copy))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("not there yet");
    }

    @Test
    void folder_that_cannot_be_used_is_refused_with_what_to_do() throws Exception {
        Path blocked = Files.createFile(folder.resolve("file"));
        assertThatThrownBy(() -> StoreFile.open(blocked.resolve("below")))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("--data");
    }
}
