package org.fandown.contract.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.fandown.app.store.RecordHead;
import org.fandown.app.store.RecordStore;
import org.fandown.app.store.Store;
import org.fandown.app.store.StoreException;
import org.jspecify.annotations.Nullable;

/** A store whose file was altered by one bit is refused, found broken, or reads as before. */
class StoreFlipsPropertyTest {
    private static final String NAME = "fandown.db";
    private static final int RECORDS = 12;

    /** Of records and seals together, without their numbers. */
    private static final int COLUMNS = 18;

    private static Path folder;
    private static byte[] whole;
    private static Read before;
    private static Store rows;
    private static Statement beside;
    private static List<String> columns;

    /** All that can be read of a store. */
    private record Read(List<RecordHead> list, List<Object> records) {
        static Read of(RecordStore store) {
            List<Object> records = new ArrayList<>();
            for (int i = 0; i < RECORDS; i++) {
                records.add(store.byId(id(i)));
                records.add(store.ofVehicle("Truck " + i));
            }
            return new Read(store.find(List.of(), List.of(), RECORDS + 1), records);
        }
    }

    @BeforeContainer
    static void fill() throws IOException, SQLException {
        folder = Files.createTempDirectory("flips");
        try (Store store = Store.inFolder(folder)) {
            for (int i = 0; i < RECORDS; i++) {
                store.records().keep(Arrivals.of(head(i), content(i)));
            }
            before = Read.of(store.records());
        }
        assertThat(folder.resolve(NAME + "-wal")).doesNotExist();
        whole = Files.readAllBytes(folder.resolve(NAME));
        openTheRows();
    }

    /** No two differ by one letter alone, so that none becomes another. */
    private static String id(int i) {
        return String.valueOf((char) ('a' + i)).repeat(2);
    }

    private static RecordHead head(int i) {
        String made = "2026-11-28T06:00:" + (10 + i) + "Z";
        return Arrivals.head(id(i), made, "Truck " + i % 3, "plate " + i);
    }

    /** Some of one page, some of several. */
    private static String content(int i) {
        return "{\"note\":\"" + "Brakes hold, lines dry. ".repeat(1 + 60 * i) + "\"}";
    }

    /** The same once more, without what keeps its rows from being altered. */
    private static void openTheRows() throws IOException, SQLException {
        Path copy = Files.createTempDirectory(folder, "rows");
        Files.write(copy.resolve(NAME), whole);
        rows = Store.inFolder(copy);
        beside = DriverManager.getConnection("jdbc:sqlite:" + copy.resolve(NAME)).createStatement();
        for (String each : strings("select name from sqlite_master where type = 'trigger'")) {
            beside.execute("drop trigger " + each);
        }
        columns =
                strings(
                        "select m.name || '.' || c.name from sqlite_master m,"
                                + " pragma_table_info(m.name) c where m.name in ('record', 'seal')"
                                + " and c.name <> 'number' order by 1");
        assertThat(columns).hasSize(COLUMNS);
    }

    private static List<String> strings(String sql) throws SQLException {
        List<String> strings = new ArrayList<>();
        try (ResultSet found = beside.executeQuery(sql)) {
            while (found.next()) {
                strings.add(found.getString(1));
            }
        }
        return strings;
    }

    @AfterContainer
    static void remove() throws IOException, SQLException {
        rows.close();
        beside.getConnection().close();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    @Property(tries = 60)
    void flipped_bit_anywhere_in_the_file_is_found_or_changes_nothing(
            @ForAll @DoubleRange(max = 1, maxIncluded = false) double where,
            @ForAll @IntRange(max = 7) int bit)
            throws IOException {
        int at = (int) (where * whole.length);
        byte[] flipped = whole.clone();
        flipped[at] ^= (byte) (1 << bit);
        assertThat(problem(flipped)).as("byte " + at + ", bit " + bit).isNotEqualTo("unseen");
    }

    @Property(tries = 200)
    void flipped_bit_in_any_text_of_any_row_is_found_in_that_record(
            @ForAll @IntRange(max = COLUMNS - 1) int column,
            @ForAll @IntRange(min = 1, max = RECORDS) int record,
            @ForAll @DoubleRange(max = 1, maxIncluded = false) double where,
            @ForAll @IntRange(max = 6) int bit)
            throws SQLException {
        String name = columns.get(column);
        String was = text(name, record);
        set(name, record, flipped(was, where, bit));
        assertThat(rows.records().check().problem().orElse("unseen"))
                .as(name + " of record " + record)
                .startsWith("Record " + record + ": ");
        set(name, record, was);
    }

    private static String flipped(String text, double where, int bit) {
        StringBuilder flipped = new StringBuilder(text.isEmpty() ? "x" : text);
        int at = (int) (where * flipped.length());
        if (!text.isEmpty()) {
            flipped.setCharAt(at, (char) (text.charAt(at) ^ 1 << bit));
        }
        return flipped.toString();
    }

    private static String text(String column, int record) throws SQLException {
        try (ResultSet row = beside.executeQuery(select(column) + record)) {
            assertThat(row.next()).isTrue();
            return row.getString(1);
        }
    }

    private static String select(String column) {
        String table = column.substring(0, column.indexOf('.'));
        return "select " + column + " from " + table + " where number = ";
    }

    private static void set(String column, int record, String text) throws SQLException {
        int dot = column.indexOf('.');
        try (PreparedStatement update =
                beside.getConnection()
                        .prepareStatement(
                                "update "
                                        + column.substring(0, dot)
                                        + " set "
                                        + column.substring(dot + 1)
                                        + " = ? where number = "
                                        + record)) {
            update.setString(1, text);
            assertThat(update.executeUpdate()).isEqualTo(1);
        }
    }

    /**
     * What is said to be wrong, null if all is as before, "unseen" if it is not and nothing is
     * said.
     */
    private static @Nullable String problem(byte[] bytes) throws IOException {
        Path copy = Files.createTempDirectory(folder, "copy");
        Files.write(copy.resolve(NAME), bytes);
        try (Store store = Store.inFolder(copy)) {
            String problem = store.records().check().problem().orElse(null);
            if (problem != null) {
                return problem;
            }
            return Read.of(store.records()).equals(before) ? null : "unseen";
        } catch (StoreException e) {
            return e.getMessage();
        }
    }
}
