package org.fandown.app.store;

import java.util.List;
import java.util.Optional;
import org.fandown.record.Seal;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/**
 * The records that are kept. What {@link #keep} has answered is on the disk, whatever happens to
 * the program afterwards. Safe for use by several threads.
 */
public final class RecordStore {
    /** Most rows a list gives at once. */
    public static final int MOST = 500;

    private final Jdbi jdbi;
    private final Database database;
    private final GroupWriter<Unsealed, Kept> writer;

    RecordStore(Jdbi jdbi, Database database) {
        this.jdbi = jdbi;
        this.database = database;
        this.writer = new GroupWriter<>(this::keepAll);
    }

    /** Keeps a record, once. */
    public Kept keep(Arrival arrival) {
        return writer.write(Unsealed.of(arrival));
    }

    private List<Kept> keepAll(List<Unsealed> records) {
        return jdbi.inTransaction(
                handle -> {
                    database.claim(handle);
                    ChainWriter chains = new ChainWriter(handle);
                    return records.stream().map(chains::keep).toList();
                });
    }

    /**
     * The newest records that fit.
     *
     * @param kinds what they may be, empty for any
     * @param words what each must have somewhere in its head, whatever the case; empty for all
     * @param limit how many at most, 1 to {@value #MOST}
     */
    public List<RecordHead> find(List<String> kinds, List<String> words, int limit) {
        return find(Optional.empty(), kinds, words, limit);
    }

    /**
     * The newest records that fit and came from one account.
     *
     * @param sender the account's name
     * @param kinds as of {@link #find}, and so are the others
     */
    public List<RecordHead> findOf(
            String sender, List<String> kinds, List<String> words, int limit) {
        return find(Optional.of(sender), kinds, words, limit);
    }

    private List<RecordHead> find(
            Optional<String> sender, List<String> kinds, List<String> words, int limit) {
        StringBuilder sql = new StringBuilder("select " + RecordRows.HEAD + RecordRows.FROM);
        sql.append("where ").append(kinds.isEmpty() ? "1 = 1" : "kind in (<kinds>)");
        sql.append(sender.isEmpty() ? "" : " and sender = :sender");
        for (int i = 0; i < words.size(); i++) {
            sql.append(" and found_by like :word").append(i).append(" escape '!'");
        }
        sql.append(" order by made desc, number desc limit :limit");
        return jdbi.withHandle(
                handle -> {
                    var query = handle.createQuery(sql.toString());
                    if (!kinds.isEmpty()) {
                        query.bindList("kinds", kinds);
                    }
                    sender.ifPresent(name -> query.bind("sender", name));
                    for (int i = 0; i < words.size(); i++) {
                        query.bind("word" + i, "%" + plain(words.get(i)) + "%");
                    }
                    return query.bind("limit", Math.max(1, Math.min(MOST, limit)))
                            .map((row, context) -> RecordRows.head(row))
                            .list();
                });
    }

    /** A word as it is, where signs of a pattern mean themselves. */
    private static String plain(String word) {
        return RecordRows.lower(word).replace("!", "!!").replace("%", "!%").replace("_", "!_");
    }

    /** A record by its id, empty if there is none. */
    public Optional<KeptRecord> byId(String id) {
        return jdbi.withHandle(
                handle ->
                        handle.createQuery(
                                        "select "
                                                + RecordRows.ALL
                                                + RecordRows.FROM
                                                + "where id = :id")
                                .bind("id", id)
                                .map((row, context) -> RecordRows.record(row))
                                .findOne());
    }

    /**
     * The records of a vehicle in the order of their arrival.
     *
     * @param chain the key of its chain
     */
    public List<KeptRecord> ofVehicle(String chain) {
        return jdbi.withHandle(
                handle ->
                        handle.createQuery(
                                        "select "
                                                + RecordRows.ALL
                                                + RecordRows.FROM
                                                + "where chain = :chain order by number")
                                .bind("chain", chain)
                                .map((row, context) -> RecordRows.record(row))
                                .list());
    }

    /** A record by its place in the order of arrival, empty if there is none. */
    public Optional<KeptRecord> byNumber(long number) {
        return one("number = :value", number);
    }

    /**
     * The record whose seal's hash begins so, empty if there is none or not one alone.
     *
     * @param digits hexadecimal digits, letters in lower case
     */
    public Optional<KeptRecord> bySealHash(String digits) {
        return one("hash like :value", digits + "%");
    }

    private Optional<KeptRecord> one(String condition, Object value) {
        List<KeptRecord> found =
                jdbi.withHandle(
                        handle ->
                                handle.createQuery(
                                                "select "
                                                        + RecordRows.ALL
                                                        + RecordRows.FROM
                                                        + "where "
                                                        + condition
                                                        + " limit 2")
                                        .bind("value", value)
                                        .map((row, context) -> RecordRows.record(row))
                                        .list());
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    /**
     * The seals of a vehicle in the order of arrival.
     *
     * @param chain the key of its chain
     */
    public List<Seal> seals(String chain) {
        return jdbi.withHandle(
                handle ->
                        handle.createQuery(
                                        "select * from seal where chain = :chain order by number")
                                .bind("chain", chain)
                                .map((row, context) -> RecordRows.seal(row))
                                .list());
    }

    /**
     * What the records of a vehicle tell, in the order of their arrival.
     *
     * @param chain the key of its chain
     * @param after only records with a higher number
     */
    public List<Telling> tellings(String chain, long after) {
        return jdbi.withHandle(
                handle ->
                        handle.createQuery(
                                        "select number, id, kind, made, statement"
                                                + RecordRows.FROM
                                                + "where chain = :chain and number > :after"
                                                + " and kind <> 'practice' order by number")
                                .bind("chain", chain)
                                .bind("after", after)
                                .map(
                                        (row, context) ->
                                                new Telling(
                                                        row.getLong("number"),
                                                        RecordRows.text(row, "id"),
                                                        RecordRows.text(row, "kind"),
                                                        RecordRows.text(row, "made"),
                                                        RecordRows.text(row, "statement")))
                                .list());
    }

    /** Goes through everything that is kept, and says what is broken first. */
    public StoreCheck check() {
        try {
            return jdbi.withHandle(handle -> new StoreWalk(handle, database).check());
        } catch (JdbiException e) {
            return new StoreCheck(
                    0, "", Optional.of("The database cannot be reached: " + e.getMessage()));
        }
    }

    /**
     * Whether a seal is there that somebody has noted.
     *
     * @param hash the hash of the seal
     */
    public boolean hasSeal(String hash) {
        return jdbi.withHandle(
                handle ->
                        handle.createQuery("select count(*) from seal where hash = :hash")
                                        .bind("hash", hash)
                                        .mapTo(Long.class)
                                        .one()
                                > 0);
    }

    /** Whether it can be read and written now; writes nothing. */
    public StoreState state() {
        try {
            // With the lock of a writer, which a full or broken disk refuses.
            long records =
                    jdbi.inTransaction(
                            handle -> {
                                database.claim(handle);
                                return handle.createQuery("select count(*) from record")
                                        .mapTo(Long.class)
                                        .one();
                            });
            return new StoreState(true, records);
        } catch (JdbiException e) {
            return new StoreState(false, 0);
        }
    }

    /** How many records are kept. */
    public long count() {
        return jdbi.withHandle(
                handle ->
                        handle.createQuery("select count(*) from record").mapTo(Long.class).one());
    }
}
