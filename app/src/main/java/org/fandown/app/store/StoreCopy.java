package org.fandown.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.jspecify.annotations.Nullable;

/**
 * Copies every row of one store into another that is empty, and compares each afterwards. The first
 * column of every table is its key.
 */
final class StoreCopy {
    /** Rows fetched at once; a record with photos can be large. */
    private static final int STEP = 20;

    private static final String NEXT = "Next: go back to a copy from before.";

    private final Handle source;
    private final Handle target;
    private final Database to;

    /**
     * Prepares a copy.
     *
     * @param source within a transaction in which nothing changes
     * @param target within a transaction that has claimed the database
     * @param to the kind of the target
     */
    StoreCopy(Handle source, Handle target, Database to) {
        this.source = source;
        this.target = target;
        this.to = to;
    }

    /**
     * Copies and compares.
     *
     * @throws StoreException if the target is not empty, or has not become the same
     */
    void run() {
        List<String> tables = Tables.inOrder(source);
        requireEmpty();
        for (String table : tables) {
            List<String> columns = Tables.columns(source, table);
            each(table, columns, row -> target.execute(insert(table, columns), row.toArray()));
            to.afterCopy(target, table, columns.get(0));
        }
        for (String table : tables) {
            compare(table);
        }
        Optional<String> problem = new StoreWalk(target, to).check().problem();
        if (problem.isPresent()) {
            throw new StoreException(
                    "What is to be copied is broken. " + problem.get() + " " + NEXT, null);
        }
    }

    private void requireEmpty() {
        for (String table : Tables.inOrder(target)) {
            long rows = count(target, table);
            if (rows > 0) {
                throw new StoreException(
                        "The store "
                                + to.place()
                                + " is not empty: "
                                + rows
                                + " rows in its table "
                                + table
                                + ". Next: name one that is.",
                        null);
            }
        }
    }

    private static long count(Handle handle, String table) {
        return handle.createQuery("select count(*) from " + table).mapTo(Long.class).one();
    }

    private String insert(String table, List<String> columns) {
        return "insert into "
                + table
                + " ("
                + String.join(", ", columns)
                + ") "
                + to.givenNumbers()
                + " values ("
                + String.join(", ", Collections.nCopies(columns.size(), "?"))
                + ")";
    }

    private void compare(String table) {
        List<String> columns = Tables.columns(source, table);
        String sql =
                "select "
                        + String.join(", ", columns)
                        + " from "
                        + table
                        + " where "
                        + columns.get(0)
                        + " = ?";
        each(
                table,
                columns,
                row -> {
                    List<List<@Nullable Object>> copied =
                            target.createQuery(sql)
                                    .bind(0, row.get(0))
                                    .map((found, context) -> values(found, columns.size()))
                                    .list();
                    if (copied.size() != 1 || !same(row, copied.get(0))) {
                        throw differs(table, row);
                    }
                });
        if (count(source, table) != count(target, table)) {
            throw differs(table, List.of("all"));
        }
    }

    private static StoreException differs(String table, List<@Nullable Object> row) {
        return new StoreException(
                "Row "
                        + row.get(0)
                        + " of the table "
                        + table
                        + " was not copied as it is. Next: try again.",
                null);
    }

    private static boolean same(List<@Nullable Object> a, List<@Nullable Object> b) {
        for (int i = 0; i < a.size(); i++) {
            if (!Objects.toString(a.get(i)).equals(Objects.toString(b.get(i)))) {
                return false;
            }
        }
        return true;
    }

    /** What is done with a row. */
    private interface Work {
        void with(List<@Nullable Object> row);
    }

    private void each(String table, List<String> columns, Work work) {
        String key = columns.get(0);
        String all = "select " + String.join(", ", columns) + " from " + table;
        String order = " order by " + key + " limit " + STEP;
        List<List<@Nullable Object>> rows = rows(source.createQuery(all + order), columns.size());
        while (!rows.isEmpty()) {
            rows.forEach(work::with);
            Object last = rows.get(rows.size() - 1).get(0);
            Query next = source.createQuery(all + " where " + key + " > ?" + order).bind(0, last);
            rows = rows(next, columns.size());
        }
    }

    private static List<List<@Nullable Object>> rows(Query query, int columns) {
        return query.map((row, context) -> values(row, columns)).list();
    }

    private static List<@Nullable Object> values(ResultSet row, int columns) throws SQLException {
        List<@Nullable Object> values = new ArrayList<>();
        for (int i = 1; i <= columns; i++) {
            values.add(row.getObject(i));
        }
        return values;
    }
}
