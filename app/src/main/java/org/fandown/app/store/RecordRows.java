package org.fandown.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Locale;
import org.fandown.record.Seal;
import org.jdbi.v3.core.Handle;

/** The rows of a record and of its seal, as the tables have them. */
final class RecordRows {
    /** The tables together. */
    static final String FROM = " from record join seal using (number) ";

    /** What a list shows. */
    static final String HEAD = "id, kind, made, received, place, vehicle, verdict, words";

    /** All of both tables but the number, which both have. */
    static final String ALL_BUT_NUMBER =
            HEAD
                    + ", found_by, content, statement, content_hash, statement_hash, sender,"
                    + " chain, site_before, chain_before, hash";

    /** All of both tables. */
    static final String ALL = "number, " + ALL_BUT_NUMBER;

    private RecordRows() {}

    static RecordHead head(ResultSet row) throws SQLException {
        return new RecordHead(
                text(row, "id"),
                text(row, "kind"),
                text(row, "made"),
                text(row, "received"),
                text(row, "place"),
                text(row, "vehicle"),
                text(row, "verdict"),
                text(row, "words"));
    }

    /**
     * The seal of a row.
     *
     * @throws IllegalArgumentException if a hash in it is none
     */
    static Seal seal(ResultSet row) throws SQLException {
        return new Seal(
                row.getLong("number"),
                text(row, "received"),
                text(row, "content_hash"),
                text(row, "statement_hash"),
                text(row, "sender"),
                text(row, "chain"),
                text(row, "site_before"),
                text(row, "chain_before"));
    }

    /** The record of a row. */
    static KeptRecord record(ResultSet row) throws SQLException {
        return new KeptRecord(head(row), text(row, "content"), text(row, "statement"), seal(row));
    }

    /**
     * A text of a row.
     *
     * @throws SQLException if it is not there, which only happens to damaged databases
     */
    static String text(ResultSet row, String column) throws SQLException {
        String text = row.getString(column);
        if (text == null) {
            throw new SQLException("Record " + row.getLong("number") + " has no " + column + ".");
        }
        return text;
    }

    /** What a record is found by: all words of its head in lower case. */
    static String foundBy(RecordHead head) {
        return lower(
                String.join(
                        " ",
                        head.id(),
                        head.kind(),
                        head.made(),
                        head.place(),
                        head.vehicle(),
                        head.verdict(),
                        head.words()));
    }

    static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }

    static void insert(
            Handle handle, long number, RecordHead head, String content, String statement) {
        handle.createUpdate(
                        "insert into record (number, id, kind, made, place, vehicle, verdict,"
                                + " words, found_by, content, statement) values (:number, :id,"
                                + " :kind, :made, :place, :vehicle, :verdict, :words, :foundBy,"
                                + " :content, :statement)")
                .bindMethods(head)
                .bind("number", number)
                .bind("foundBy", foundBy(head))
                .bind("content", content)
                .bind("statement", statement)
                .execute();
    }

    static void insert(Handle handle, Seal seal, String hash) {
        handle.createUpdate(
                        "insert into seal (number, received, content_hash, statement_hash, sender,"
                                + " chain, site_before, chain_before, hash) values (:number,"
                                + " :received, :record, :judgement, :sender, :vehicle,"
                                + " :siteBefore, :vehicleBefore, :hash)")
                .bindMethods(seal)
                .bind("hash", hash)
                .execute();
    }
}
