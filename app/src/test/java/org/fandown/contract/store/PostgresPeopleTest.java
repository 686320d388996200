package org.fandown.contract.store;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import org.fandown.app.store.Store;

class PostgresPeopleTest extends PeopleContract {
    private final String url = TestPostgres.database();

    @Override
    Store openStore() {
        return Store.at(url);
    }

    @Override
    Connection besideIt() throws SQLException {
        return DriverManager.getConnection(url);
    }
}
