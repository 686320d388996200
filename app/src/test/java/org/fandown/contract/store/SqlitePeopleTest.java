package org.fandown.contract.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import org.fandown.app.store.Store;
import org.junit.jupiter.api.io.TempDir;

class SqlitePeopleTest extends PeopleContract {
    @TempDir private Path folder;

    @Override
    Store openStore() {
        return Store.inFolder(folder);
    }

    @Override
    Connection besideIt() throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("fandown.db"));
    }
}
