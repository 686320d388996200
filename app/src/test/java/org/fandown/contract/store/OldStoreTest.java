package org.fandown.contract.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fandown.app.store.Kept;
import org.fandown.app.store.KeptRecord;
import org.fandown.app.store.RecordHead;
import org.fandown.app.store.RecordStore;
import org.fandown.app.store.Store;
import org.fandown.app.store.StoreException;
import org.fandown.document.Json;
import org.fandown.record.CanonicalJson;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A store that an older program made, frozen as it was. */
class OldStoreTest {
    private static final String ID = "0b7e3a52-93d1-4c0e-9a65-0d5f6f0a1c0";

    @TempDir private Path folder;

    @BeforeEach
    void takeTheFrozenFile() throws Exception {
        try (InputStream frozen = OldStoreTest.class.getResourceAsStream("v1/fandown.db")) {
            Files.copy(frozen, folder.resolve("fandown.db"));
        }
    }

    private Connection besideIt() throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("fandown.db"));
    }

    private Map<String, String> contents() throws SQLException {
        Map<String, String> contents = new LinkedHashMap<>();
        try (Connection by = besideIt();
                Statement statement = by.createStatement();
                ResultSet rows = statement.executeQuery("select id, content from record")) {
            while (rows.next()) {
                contents.put(rows.getString("id"), rows.getString("content"));
            }
        }
        return contents;
    }

    @Test
    void every_record_is_there_as_canonical_json_and_sealed_in_the_order_of_arrival()
            throws Exception {
        Map<String, String> before = contents();
        assertThat(before).hasSize(4);
        try (Store store = Store.inFolder(folder)) {
            RecordStore records = store.records();
            assertThat(records.check().problem()).isEmpty();
            assertThat(records.check().records()).isEqualTo(4);
            for (int i = 0; i < 4; i++) {
                KeptRecord kept = records.byId(ID + i).orElseThrow();
                assertThat(kept.seal().number()).isEqualTo(i + 1);
                assertThat(kept.content())
                        .isEqualTo(CanonicalJson.write(Json.read("x", before.get(ID + i))));
            }
            assertThat(records.find(List.of(), List.of("not fit"), 10))
                    .extracting(RecordHead::id)
                    .containsExactly(ID + 1);
            assertThat(vehicleBefore(records, 0)).isEmpty();
            assertThat(vehicleBefore(records, 1)).isEmpty();
            assertThat(vehicleBefore(records, 2)).isEqualTo(hash(records, 0));
            assertThat(vehicleBefore(records, 3)).isEqualTo(hash(records, 2));
        }
    }

    private static String vehicleBefore(RecordStore records, int which) {
        return records.byId(ID + which).orElseThrow().seal().vehicleBefore();
    }

    private static String hash(RecordStore records, int which) {
        return records.byId(ID + which).orElseThrow().seal().hash();
    }

    @Test
    void record_that_is_sent_again_is_known_and_new_ones_follow() {
        try (Store store = Store.inFolder(folder)) {
            KeptRecord kept = store.records().byId(ID + 2).orElseThrow();
            assertThat(store.records().keep(Arrivals.of(kept.head(), kept.content())))
                    .isEqualTo(Kept.BEFORE);
            store.records().keep(Arrivals.of("a", "Truck 4"));
        }
        try (Store store = Store.inFolder(folder)) {
            assertThat(store.records().byId("a").orElseThrow().seal().number()).isEqualTo(5);
            assertThat(store.records().check().problem()).isEmpty();
        }
    }

    @Test
    void record_that_was_altered_before_is_not_sealed() throws Exception {
        try (Connection by = besideIt();
                Statement statement = by.createStatement()) {
            statement.execute("drop trigger record_stays");
            statement.execute(
                    "update record set content = replace(content, 'psi', 'kPa') where number = 2");
        }
        assertThatThrownBy(() -> Store.inFolder(folder))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("Record 2 is not what was kept");
        assertThat(contents()).hasSize(4);
    }
}
