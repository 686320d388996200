package org.fandown.contract.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import org.fandown.app.store.Store;
import org.fandown.app.store.StoreException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SqliteRecordStoreTest extends RecordStoreContract {
    @TempDir private Path folder;

    @Override
    Store openStore() {
        return Store.inFolder(folder);
    }

    @Override
    Connection besideIt() throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("fandown.db"));
    }

    @Test
    void folder_that_cannot_be_used_is_refused_with_what_to_do() throws Exception {
        Path blocked = Files.createFile(folder.resolve("file"));
        assertThatThrownBy(() -> Store.inFolder(blocked.resolve("below")))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("--data");
    }

    @Test
    void copy_made_while_in_use_is_whole_and_never_overwrites() {
        Store store = open();
        store.records().keep(head("a", "2026-11-30T06:00:00Z", "Truck 4", ""), "1");
        Path copies = folder.resolve("copies");
        assertThat(copies.toFile().mkdir()).isTrue();
        Path copy = copies.resolve("fandown.db");
        store.backUp(copy);
        try (Store opened = Store.inFolder(copies)) {
            assertThat(opened.records().byId("a")).isPresent();
        }
        assertThatThrownBy(() -> store.backUp(copy))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("not there yet");
    }
}
