package org.fandown.contract.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.fandown.app.store.Kept;
import org.fandown.app.store.Store;
import org.fandown.app.store.StoreException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is moved, backed up and restored between both databases is the same in every row. */
class StoreCopyContractTest {
    /** More than are fetched at once. */
    private static final int RECORDS = 47;

    @TempDir private Path folder;

    /** Where a store is: in a folder, or in a new database of the server. */
    private final class Where {
        private final String jdbc;
        private final Path data;
        private final boolean inFolder;

        Where(String kind, String name) {
            inFolder = kind.equals("sqlite");
            data = folder.resolve(name);
            jdbc = inFolder ? "jdbc:sqlite:" + data.resolve("fandown.db") : TestPostgres.database();
        }

        Store open() {
            return inFolder ? Store.inFolder(data) : Store.at(jdbc);
        }

        /** All tables but those of the databases themselves, each row as texts, by its key. */
        Map<String, List<String>> rows() throws SQLException {
            return StoreCopyContractTest.rows(jdbc);
        }

        void execute(String... sql) throws SQLException {
            try (Connection by = DriverManager.getConnection(jdbc);
                    Statement statement = by.createStatement()) {
                for (String each : sql) {
                    statement.execute(each);
                }
            }
        }
    }

    private static Map<String, List<String>> rows(String jdbc) throws SQLException {
        boolean sqlite = jdbc.startsWith("jdbc:sqlite:");
        String tables =
                sqlite
                        ? "select name from sqlite_master where type = 'table' and name not like"
                                + " 'sqlite%'"
                        : "select tablename from pg_tables where schemaname = 'public'";
        Map<String, List<String>> rows = new TreeMap<>();
        try (Connection by = DriverManager.getConnection(jdbc);
                Statement statement = by.createStatement()) {
            for (String table : texts(statement, tables)) {
                if (!table.startsWith("flyway")) {
                    List<String> found = texts(statement, "select * from " + table);
                    found.sort(null);
                    rows.put(table, found);
                }
            }
        }
        assertThat(rows).containsKeys("record", "seal");
        return rows;
    }

    private static List<String> texts(Statement statement, String sql) throws SQLException {
        List<String> texts = new ArrayList<>();
        try (ResultSet rows = statement.executeQuery(sql)) {
            while (rows.next()) {
                StringBuilder text = new StringBuilder();
                for (int i = 1; i <= rows.getMetaData().getColumnCount(); i++) {
                    text.append(i == 1 ? "" : "|").append(rows.getString(i));
                }
                texts.add(text.toString());
            }
        }
        return texts;
    }

    private static void fill(Store store) {
        for (int i = 0; i < RECORDS; i++) {
            store.records().keep(Arrivals.of("r" + i, "Wagen Ä" + i % 5));
        }
    }

    @ParameterizedTest
    @CsvSource({"sqlite,sqlite", "sqlite,postgres", "postgres,sqlite", "postgres,postgres"})
    void back_up_and_restore_bring_every_row_to_a_store_that_goes_on(String from, String to)
            throws Exception {
        Where first = new Where(from, "first");
        Where second = new Where(to, "second");
        Path copy = folder.resolve("copy.db");
        try (Store store = first.open()) {
            fill(store);
            store.backUp(copy);
        }
        byte[] bytes = Files.readAllBytes(copy);
        Map<String, List<String>> rows = first.rows();
        assertThat(rows.get("record")).hasSize(RECORDS);
        assertThat(rows("jdbc:sqlite:" + copy)).isEqualTo(rows);
        try (Store store = second.open()) {
            store.restore(copy);
            assertThat(second.rows()).isEqualTo(rows);
            assertThat(store.records().keep(Arrivals.of("r3", "Wagen Ä3"))).isEqualTo(Kept.BEFORE);
            assertThat(store.records().keep(Arrivals.of("new", "Wagen Ä3"))).isEqualTo(Kept.NEW);
            assertThat(store.records().check().problem()).isEmpty();
            assertThat(store.records().check().records()).isEqualTo(RECORDS + 1);
        }
        assertThat(Files.readAllBytes(copy)).isEqualTo(bytes);
        try (var files = Files.list(folder)) {
            assertThat(files).noneMatch(file -> file.toString().contains(".part"));
        }
    }

    @ParameterizedTest
    @CsvSource({"sqlite", "postgres"})
    void store_that_holds_something_is_never_copied_over(String kind) throws Exception {
        Where first = new Where("sqlite", "first");
        Where second = new Where(kind, "second");
        try (Store store = first.open();
                Store other = second.open()) {
            fill(store);
            other.records().keep(Arrivals.of("mine", "Truck 9"));
            Map<String, List<String>> rows = second.rows();
            assertThatThrownBy(() -> store.copyAllTo(other))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("is not empty");
            assertThat(second.rows()).isEqualTo(rows);
        }
    }

    @Test
    void broken_store_is_not_moved_and_the_move_can_be_made_once_it_is_mended() throws Exception {
        Where first = new Where("sqlite", "first");
        Where second = new Where("postgres", "second");
        try (Store store = first.open();
                Store other = second.open()) {
            fill(store);
            first.execute(
                    "drop trigger record_never_changes",
                    "update record set words = 'XYD 418' where number = 30");
            assertThatThrownBy(() -> store.copyAllTo(other))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("Record 30");
            assertThat(other.records().count()).isZero();
            assertThatThrownBy(() -> store.backUp(folder.resolve("copy.db")))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("Record 30");
            assertThat(folder.resolve("copy.db")).doesNotExist();
            first.execute("update record set words = 'XYD 417' where number = 30");
            store.copyAllTo(other);
        }
        assertThat(second.rows()).isEqualTo(first.rows());
    }

    @Test
    void what_is_no_copy_is_refused() throws Exception {
        Path empty = Files.createFile(folder.resolve("empty.db"));
        Path text = Files.writeString(folder.resolve("text.db"), "mine, and longer than a head");
        try (Store store = new Where("sqlite", "first").open()) {
            for (Path file : List.of(empty, text, folder.resolve("none.db"))) {
                assertThatThrownBy(() -> store.restore(file))
                        .isInstanceOf(StoreException.class)
                        .hasMessageContaining("cannot be used")
                        .hasMessageContaining("back-up");
            }
            assertThatThrownBy(() -> store.backUp(text))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("not there yet");
        }
        assertThat(text).hasContent("mine, and longer than a head");
    }
}
