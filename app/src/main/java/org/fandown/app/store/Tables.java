package org.fandown.app.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jdbi.v3.core.Handle;

/** The tables of a store, whatever they hold, as its database tells of them. */
final class Tables {
    private Tables() {}

    /**
     * All but those in which the database and Flyway keep their own books; whatever a row refers to
     * comes before.
     */
    static List<String> inOrder(Handle handle) {
        try {
            return inOrder(handle.getConnection());
        } catch (SQLException e) {
            throw new StoreException("The tables cannot be listed: " + e.getMessage(), e);
        }
    }

    private static List<String> inOrder(Connection connection) throws SQLException {
        TreeMap<String, List<String>> needs = new TreeMap<>();
        for (String table : names(connection)) {
            needs.put(table, needs(connection, table));
        }
        List<String> ordered = new ArrayList<>();
        while (ordered.size() < needs.size()) {
            int before = ordered.size();
            needs.forEach(
                    (table, needed) -> {
                        if (!ordered.contains(table) && ordered.containsAll(needed)) {
                            ordered.add(table);
                        }
                    });
            if (ordered.size() == before) {
                throw new IllegalStateException("Tables refer to each other in a ring: " + needs);
            }
        }
        return ordered;
    }

    private static Set<String> names(Connection connection) throws SQLException {
        TreeSet<String> names = new TreeSet<>();
        String[] tables = {"TABLE"};
        try (ResultSet rows =
                connection.getMetaData().getTables(null, connection.getSchema(), "%", tables)) {
            while (rows.next()) {
                names.add(rows.getString("TABLE_NAME"));
            }
        }
        names.removeIf(name -> name.startsWith("sqlite_") || name.startsWith("flyway_"));
        return names;
    }

    private static List<String> needs(Connection connection, String table) throws SQLException {
        List<String> needed = new ArrayList<>();
        try (ResultSet rows =
                connection.getMetaData().getImportedKeys(null, connection.getSchema(), table)) {
            while (rows.next()) {
                needed.add(rows.getString("PKTABLE_NAME"));
            }
        }
        return needed;
    }

    /** The columns of a table, its key first. */
    static List<String> columns(Handle handle, String table) {
        try (ResultSet rows =
                handle.getConnection()
                        .getMetaData()
                        .getColumns(null, handle.getConnection().getSchema(), table, "%")) {
            List<String> columns = new ArrayList<>();
            while (rows.next()) {
                columns.add(rows.getString("COLUMN_NAME"));
            }
            return columns;
        } catch (SQLException e) {
            throw new StoreException(
                    "The columns of " + table + " cannot be listed: " + e.getMessage(), e);
        }
    }
}
