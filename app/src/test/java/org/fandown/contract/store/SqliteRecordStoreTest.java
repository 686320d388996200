package org.fandown.contract.store;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.fandown.app.store.Store;
import org.fandown.app.store.StoreException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SqliteRecordStoreTest extends RecordStoreContract {
    private static final List<String> TRIGGERS =
            List.of(
                    "record_never_changes",
                    "record_never_goes",
                    "record_never_replaced",
                    "seal_never_changes",
                    "seal_never_goes",
                    "seal_never_replaced");

    @TempDir private Path folder;

    @Override
    Store openStore() {
        return Store.inFolder(folder);
    }

    @Override
    Connection besideIt() throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("fandown.db"));
    }

    @Override
    void unlock(Statement statement) throws SQLException {
        for (String trigger : TRIGGERS) {
            statement.execute("drop trigger if exists " + trigger);
        }
    }

    @Test
    void record_cannot_be_replaced_either() throws Exception {
        open().records().keep(Arrivals.of("a", "Truck 4"));
        try (Connection by = besideIt();
                Statement statement = by.createStatement()) {
            for (String table : List.of("record", "seal")) {
                String sql = "insert or replace into " + table + " select * from " + table;
                assertThatThrownBy(() -> statement.execute(sql))
                        .hasMessageContaining("never changed");
            }
        }
    }

    @Test
    void folder_that_cannot_be_used_is_refused_with_what_to_do() throws Exception {
        Path blocked = Files.createFile(folder.resolve("file"));
        assertThatThrownBy(() -> Store.inFolder(blocked.resolve("below")))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("--data");
    }
}
