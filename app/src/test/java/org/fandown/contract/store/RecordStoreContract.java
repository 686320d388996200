package org.fandown.contract.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.fandown.app.store.Kept;
import org.fandown.app.store.RecordHead;
import org.fandown.app.store.RecordStore;
import org.fandown.app.store.Store;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What every store of records has to do, whatever database is below it. */
abstract class RecordStoreContract {
    private final List<Store> opened = new ArrayList<>();

    /** Opens the one store of this test, as often as it is asked. */
    abstract Store openStore();

    /** A connection to its database by the side of the store. */
    abstract Connection besideIt() throws SQLException;

    final Store open() {
        Store store = openStore();
        opened.add(store);
        return store;
    }

    @AfterEach
    void close() {
        opened.forEach(Store::close);
    }

    static RecordHead head(String id, String made, String vehicle, String words) {
        return new RecordHead(id, "inspection", made, made, "CA-ON", vehicle, "fit to move", words);
    }

    @Test
    void record_is_kept_once_however_often_it_is_sent() {
        RecordStore store = open().records();
        RecordHead head = head("a", "2026-11-30T06:00:00Z", "Truck 4", "XYD 417");
        assertThat(store.keep(head, "{\"a\":1}")).isEqualTo(Kept.NEW);
        assertThat(store.keep(head, "{\"a\":1}")).isEqualTo(Kept.BEFORE);
        assertThat(store.keep(head, "{\"a\":2}")).isEqualTo(Kept.CONFLICT);
        assertThat(store.count()).isEqualTo(1);
        assertThat(store.byId("a").orElseThrow().content()).isEqualTo("{\"a\":1}");
    }

    @Test
    void record_is_found_by_every_word_of_its_head_newest_first() {
        RecordStore store = open().records();
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
        open().records().keep(head("a", "2026-11-28T06:00:00Z", "Truck 4", ""), "1");
        try (Connection by = besideIt();
                var statement = by.createStatement()) {
            assertThatThrownBy(() -> statement.execute("update record set content = '2'"))
                    .hasMessageContaining("never changed");
            assertThatThrownBy(() -> statement.execute("delete from record"))
                    .hasMessageContaining("never deleted");
        }
        assertThat(open().records().byId("a").orElseThrow().content()).isEqualTo("1");
    }

    @Test
    void many_at_once_lose_nothing() throws Exception {
        RecordStore store = open().records();
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
}
