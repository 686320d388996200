package org.fandown.contract.store;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.fandown.app.store.Store;
import org.fandown.app.store.StoreException;
import org.junit.jupiter.api.Test;

class PostgresRecordStoreTest extends RecordStoreContract {
    private final String url = TestPostgres.database();

    @Override
    Store openStore() {
        return Store.at(url);
    }

    @Override
    Connection besideIt() throws SQLException {
        return DriverManager.getConnection(url);
    }

    @Override
    void unlock(Statement statement) throws SQLException {
        statement.execute("alter table record disable trigger all");
        statement.execute("alter table seal disable trigger all");
    }

    @Test
    void table_cannot_be_emptied_either() throws Exception {
        open().records().keep(Arrivals.of("a", "Truck 4"));
        try (Connection by = besideIt();
                var statement = by.createStatement()) {
            assertThatThrownBy(() -> statement.execute("truncate record cascade"))
                    .hasMessageContaining("never deleted");
        }
    }

    @Test
    void server_that_is_not_there_is_refused_with_what_to_do_and_without_the_password() {
        refusedWithoutSecret(() -> Store.at("jdbc:postgresql://127.0.0.1:1/x?password=secret"));
        refusedWithoutSecret(() -> Store.at(url.replaceAll("password=.*", "password=secret")));
        refusedWithoutSecret(() -> Store.at("jdbc:postgresql://127.0.0.1:no/x?password=secret"));
        refusedWithoutSecret(() -> Store.at("jdbc:other://127.0.0.1/x?password=secret"));
    }

    private static void refusedWithoutSecret(ThrowingCallable open) {
        assertThatThrownBy(open)
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("jdbc:postgresql://HOST")
                .hasMessageNotContaining("secret");
    }
}
