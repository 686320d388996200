package org.fandown.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.fandown.document.DocumentException;
import org.fandown.document.Json;
import org.fandown.document.MapNode;
import org.fandown.document.Node;
import org.fandown.record.Seal;
import org.fandown.record.SealChain;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;
import org.jspecify.annotations.Nullable;

/** Goes through all that is kept, from the first record to the last, and compares it. */
final class StoreWalk {
    /** Rows fetched at once; a record with photos can be large. */
    private static final int STEP = 20;

    private final Handle handle;
    private final Database database;
    private final SealChain chain = new SealChain();
    private long records;
    private String end = "";

    StoreWalk(Handle handle, Database database) {
        this.handle = handle;
        this.database = database;
    }

    /** What one record is found broken by. */
    private static final class BrokenException extends SQLException {
        private static final long serialVersionUID = 1L;

        BrokenException(long number, String what) {
            super("Record " + number + ": " + what);
        }
    }

    StoreCheck check() {
        Optional<String> problem;
        try {
            problem = firstProblem();
        } catch (JdbiException e) {
            problem = Optional.of(words(e));
        }
        return new StoreCheck(records, end, problem);
    }

    private String words(JdbiException e) {
        return e.getCause() instanceof BrokenException broken
                ? String.valueOf(broken.getMessage())
                : "After record " + records + " the database cannot be read: " + e.getMessage();
    }

    private Optional<String> firstProblem() {
        Optional<String> damage = database.damage(handle);
        if (damage.isPresent()) {
            return damage;
        }
        while (step() > 0) {}
        return handle.createQuery(
                        "select min(record.number) from record left join seal"
                                + " on seal.number = record.number where seal.number is null")
                .mapTo(Long.class)
                .findOne()
                .map(number -> "Record " + number + ": it has no seal; it was put in.");
    }

    /** Looks at the next rows, and returns how many there were. */
    private int step() {
        List<Long> seen =
                handle.createQuery(
                                "select seal.number as number, record.number as there, "
                                        + RecordRows.ALL_BUT_NUMBER
                                        + " from seal left join record on record.number ="
                                        + " seal.number where seal.number > :last"
                                        + " order by seal.number limit :step")
                        .bind("last", chain.number())
                        .bind("step", STEP)
                        .map((row, context) -> look(row))
                        .list();
        return seen.size();
    }

    private long look(ResultSet row) throws SQLException {
        long number = row.getLong("number");
        row.getLong("there");
        if (row.wasNull()) {
            throw new BrokenException(number, "it is missing, though its seal is there.");
        }
        Seal seal = seal(row, number);
        Optional<String> broken = chain.take(seal);
        if (broken.isPresent()) {
            throw new BrokenException(number, broken.get());
        }
        String hash = RecordRows.text(row, "hash");
        require(number, seal.hash().equals(hash), "its seal is not what it was.");
        KeptRecord record = RecordRows.record(row);
        requireSealed(number, record);
        require(
                number,
                RecordRows.foundBy(record.head()).equals(RecordRows.text(row, "found_by")),
                "what it is found by is not what it was.");
        records = number;
        end = hash;
        return number;
    }

    private static Seal seal(ResultSet row, long number) throws SQLException {
        try {
            return RecordRows.seal(row);
        } catch (IllegalArgumentException e) {
            throw new BrokenException(number, "its seal is not what it was.");
        }
    }

    private static void requireSealed(long number, KeptRecord record) throws SQLException {
        Seal seal = record.seal();
        require(
                number,
                Unsealed.hash(record.content()).equals(seal.record()),
                "its content is not what it was.");
        require(
                number,
                Unsealed.hash(record.statement()).equals(seal.judgement()),
                "what was said of it when it arrived is not what it was.");
        require(
                number,
                Statement.of(record.head(), judgement(record)).equals(record.statement()),
                "its head is not what it was.");
    }

    private static @Nullable Node judgement(KeptRecord record) {
        try {
            MapNode statement = (MapNode) Json.read("statement", record.statement());
            MapNode.Entry judgement = statement.entries().get("judgement");
            return judgement == null ? null : judgement.value();
        } catch (DocumentException | ClassCastException e) {
            return null;
        }
    }

    private static void require(long number, boolean holds, String otherwise)
            throws BrokenException {
        if (!holds) {
            throw new BrokenException(number, otherwise);
        }
    }
}
