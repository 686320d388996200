package org.fandown.contract.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.fandown.contract.store.Arrivals.head;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.fandown.app.store.Kept;
import org.fandown.app.store.KeptRecord;
import org.fandown.app.store.RecordHead;
import org.fandown.app.store.RecordStore;
import org.fandown.app.store.Store;
import org.fandown.app.store.StoreCheck;
import org.fandown.record.Seal;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What every store of records has to do, whatever database is below it. */
abstract class RecordStoreContract {
    private final List<Store> opened = new ArrayList<>();

    /** Opens the one store of this test, as often as it is asked. */
    abstract Store openStore();

    /** A connection to its database by the side of the store. */
    abstract Connection besideIt() throws SQLException;

    /** Takes away what keeps rows from being altered, as somebody could who has the database. */
    abstract void unlock(Statement statement) throws SQLException;

    final Store open() {
        Store store = openStore();
        opened.add(store);
        return store;
    }

    @AfterEach
    void close() {
        opened.forEach(Store::close);
    }

    @Test
    void record_is_kept_once_however_often_it_is_sent() {
        RecordStore store = open().records();
        RecordHead head = head("a", "2026-11-30T06:00:00Z", "Truck 4", "XYD 417");
        assertThat(store.keep(Arrivals.of(head, "{\"b\":1, \"a\":1.0}"))).isEqualTo(Kept.NEW);
        assertThat(store.keep(Arrivals.of(head, "{\"a\":1,\"b\":1}"))).isEqualTo(Kept.BEFORE);
        assertThat(store.keep(Arrivals.of(head, "{\"a\":2,\"b\":1}"))).isEqualTo(Kept.CONFLICT);
        assertThat(store.count()).isEqualTo(1);
        KeptRecord kept = store.byId("a").orElseThrow();
        assertThat(kept.content()).isEqualTo("{\"a\":1,\"b\":1}");
        assertThat(kept.head()).isEqualTo(head);
        assertThat(kept.statement()).contains("\"words\":\"XYD 417\"").contains("judgement");
    }

    @Test
    void record_is_found_by_kind_and_every_word_of_its_head_newest_first() {
        RecordStore store = open().records();
        store.keep(Arrivals.of(head("a", "2026-11-28T06:00:00Z", "Truck 4", "XYD Ines"), "1"));
        store.keep(Arrivals.of(head("b", "2026-11-29T06:00:00Z", "Bus 8", "100% wool_ ÉTÉ"), "2"));
        store.keep(Arrivals.of(head("c", "2026-11-30T06:00:00Z", "Truck 5", "XYD 418"), "3"));
        assertThat(ids(store)).containsExactly("c", "b", "a");
        assertThat(ids(store, "truck", "xyd")).containsExactly("c", "a");
        assertThat(ids(store, "xyd", "INES")).containsExactly("a");
        assertThat(ids(store, "été")).containsExactly("b");
        assertThat(ids(store, "0%")).containsExactly("b");
        assertThat(ids(store, "l_")).containsExactly("b");
        assertThat(ids(store, "k_4")).isEmpty();
        assertThat(ids(store, "' or 1=1 --")).isEmpty();
        assertThat(store.find(List.of("inspection"), List.of("ines"), 10)).hasSize(1);
        assertThat(store.find(List.of("practice", "other"), List.of(), 10)).isEmpty();
        assertThat(store.findOf("ines", List.of("inspection"), List.of("xyd"), 10)).hasSize(2);
        assertThat(store.findOf("ines", List.of("practice"), List.of(), 10)).isEmpty();
        assertThat(store.findOf("omar", List.of(), List.of(), 10)).isEmpty();
        assertThat(store.findOf("", List.of(), List.of(), 10)).isEmpty();
    }

    private static List<String> ids(RecordStore store, String... words) {
        return store.find(List.of(), List.of(words), 10).stream().map(RecordHead::id).toList();
    }

    @Test
    void text_that_no_database_keeps_as_it_is_does_no_harm() {
        RecordStore store = open().records();
        RecordHead head = head("a", "2026-11-30T06:00:00Z", "T\0 \ud83d\ude9a", "\0 né");
        assertThat(store.keep(Arrivals.of(head, "{\"t\":\"\\u0000 \ud83d\ude9a\"}")))
                .isEqualTo(Kept.NEW);
        KeptRecord kept = store.byId("a").orElseThrow();
        assertThat(kept.head().vehicle()).isEqualTo("T\ufffd \ud83d\ude9a");
        assertThat(kept.content()).isEqualTo("{\"t\":\"\\u0000 \ud83d\ude9a\"}");
        assertThat(store.check().problem()).isEmpty();
    }

    @Test
    void every_record_is_linked_to_the_one_before_and_to_the_one_before_of_its_vehicle() {
        RecordStore store = open().records();
        for (String each : List.of("a 4", "b 5", "c 4", "d 5", "e 4")) {
            store.keep(Arrivals.of(each.substring(0, 1), "Truck " + each.substring(2)));
        }
        assertThat(seal(store, "a"))
                .satisfies(
                        seal -> {
                            assertThat(seal.number()).isEqualTo(1);
                            assertThat(seal.siteBefore()).isEmpty();
                            assertThat(seal.vehicleBefore()).isEmpty();
                            assertThat(seal.sender()).isEqualTo("ines");
                        });
        assertThat(seal(store, "b").siteBefore()).isEqualTo(seal(store, "a").hash());
        assertThat(seal(store, "b").vehicleBefore()).isEmpty();
        assertThat(seal(store, "e").siteBefore()).isEqualTo(seal(store, "d").hash());
        assertThat(seal(store, "e").vehicleBefore()).isEqualTo(seal(store, "c").hash());
        assertThat(store.ofVehicle("Truck 5"))
                .extracting(kept -> kept.head().id())
                .containsExactly("b", "d");
        assertThat(store.check())
                .isEqualTo(new StoreCheck(5, seal(store, "e").hash(), Optional.empty()));
    }

    private static Seal seal(RecordStore store, String id) {
        return store.byId(id).orElseThrow().seal();
    }

    @Test
    void kept_record_and_its_seal_can_be_neither_changed_nor_deleted() throws Exception {
        open().records().keep(Arrivals.of("a", "Truck 4"));
        try (Connection by = besideIt();
                var statement = by.createStatement()) {
            for (String table : List.of("record", "seal")) {
                assertThatThrownBy(() -> statement.execute("update " + table + " set number = 2"))
                        .hasMessageContaining("never changed");
                assertThatThrownBy(() -> statement.execute("delete from " + table))
                        .hasMessageContaining("never deleted");
            }
        }
        assertThat(open().records().check().records()).isEqualTo(1);
    }

    @Test
    void many_at_once_by_two_programs_lose_nothing_and_make_one_chain() throws Exception {
        List<RecordStore> stores = List.of(open().records(), open().records());
        ExecutorService writers = Executors.newFixedThreadPool(16);
        List<Callable<Kept>> tasks =
                IntStream.range(0, 400)
                        .mapToObj(i -> (Callable<Kept>) () -> keep(stores.get(i % 2), i % 200 / 2))
                        .toList();
        List<Future<Kept>> answers = writers.invokeAll(tasks);
        writers.shutdown();
        int fresh = 0;
        for (Future<Kept> answer : answers) {
            fresh += answer.get() == Kept.NEW ? 1 : 0;
        }
        assertThat(fresh).isEqualTo(100);
        assertThat(stores.get(0).count()).isEqualTo(100);
        assertThat(stores.get(1).check())
                .satisfies(check -> assertThat(check.problem()).isEmpty())
                .satisfies(check -> assertThat(check.records()).isEqualTo(100));
    }

    private static Kept keep(RecordStore store, int which) {
        return store.keep(Arrivals.of("r" + which, "Truck " + which % 7));
    }

    @Test
    void whatever_column_is_altered_the_check_names_the_record() throws Exception {
        RecordStore store = open().records();
        for (String id : List.of("a", "b", "c", "d")) {
            store.keep(Arrivals.of(id, "Truck 4"));
        }
        String end = store.check().end();
        try (Connection by = besideIt();
                var statement = by.createStatement()) {
            unlock(statement);
            for (String table : List.of("record", "seal")) {
                for (String column : columns(by, table)) {
                    String was = "select " + column + " from " + table + " where number = 2";
                    String value = text(statement, was);
                    String set = "update " + table + " set " + column + " = '";
                    statement.execute(set + altered(value) + "' where number = 2");
                    assertThat(store.check().problem().orElse("nothing"))
                            .as(table + "." + column)
                            .startsWith("Record 2: ");
                    statement.execute(set + value + "' where number = 2");
                }
            }
        }
        assertThat(store.check()).isEqualTo(new StoreCheck(4, end, Optional.empty()));
    }

    @Test
    void record_put_in_left_out_or_exchanged_is_found() throws Exception {
        RecordStore store = open().records();
        for (String id : List.of("a", "b", "c", "d")) {
            store.keep(Arrivals.of(id, "Truck 4"));
        }
        String copied =
                "insert into record select 9, 'x', kind, made, place, vehicle, verdict, words,"
                        + " found_by, content, statement from record where number = 2";
        foundAfter(store, copied, "Record 9: ");
        foundAfter(store, "delete from record where number = 9 or number = 3", "Record 3: ");
        foundAfter(store, "delete from seal where number = 3", "Record 4: Record 4 follows");
    }

    private void foundAfter(RecordStore store, String sql, String problem) throws SQLException {
        try (Connection by = besideIt();
                var statement = by.createStatement()) {
            unlock(statement);
            statement.execute(sql);
        }
        assertThat(store.check().problem().orElse("nothing")).startsWith(problem);
    }

    /** A text that differs in its last letter. */
    private static String altered(String value) {
        return value.isEmpty()
                ? "x"
                : value.substring(0, value.length() - 1) + (value.endsWith("x") ? "y" : "x");
    }

    private static List<String> columns(Connection by, String table) throws SQLException {
        List<String> columns = new ArrayList<>();
        try (ResultSet rows = by.getMetaData().getColumns(null, null, table, "%")) {
            while (rows.next()) {
                columns.add(rows.getString("COLUMN_NAME"));
            }
        }
        columns.remove("number");
        assertThat(columns).hasSizeGreaterThan(7);
        return columns;
    }

    private static String text(Statement statement, String sql) throws SQLException {
        try (ResultSet row = statement.executeQuery(sql)) {
            assertThat(row.next()).isTrue();
            return row.getString(1);
        }
    }
}
