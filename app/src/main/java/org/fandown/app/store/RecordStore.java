package org.fandown.app.store;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.fandown.app.files.Sha256;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.mapper.RowMapper;

/**
 * The records that are kept. What {@link #keep} has answered is on the disk, whatever happens to
 * the program afterwards. Safe for use by several threads.
 */
public final class RecordStore {
    /** Most rows a list gives at once. */
    public static final int MOST = 500;

    private static final String COLUMNS =
            "number, id, kind, made, received, place, vehicle, verdict, words";

    private static final RowMapper<RecordHead> HEAD =
            (row, at) ->
                    new RecordHead(
                            row.getString("id"),
                            row.getString("kind"),
                            row.getString("made"),
                            row.getString("received"),
                            row.getString("place"),
                            row.getString("vehicle"),
                            row.getString("verdict"),
                            row.getString("words"));

    private final Jdbi jdbi;

    RecordStore(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    /**
     * Keeps a record, once.
     *
     * @param head what it is found by
     * @param content the whole record
     */
    public Kept keep(RecordHead head, String content) {
        String hash = Sha256.of(content.getBytes(StandardCharsets.UTF_8));
        return jdbi.inTransaction(
                handle -> {
                    if (insert(handle, head, content, hash) == 1) {
                        return Kept.NEW;
                    }
                    String kept =
                            handle.createQuery("select hash from record where id = :id")
                                    .bind("id", head.id())
                                    .mapTo(String.class)
                                    .one();
                    return kept.equals(hash) ? Kept.BEFORE : Kept.CONFLICT;
                });
    }

    private static int insert(Handle handle, RecordHead head, String content, String hash) {
        return handle.createUpdate(
                        "insert into record (id, kind, made, received, place, vehicle, verdict,"
                                + " words, content, hash) values (:id, :kind, :made, :received,"
                                + " :place, :vehicle, :verdict, :words, :content, :hash)"
                                + " on conflict (id) do nothing")
                .bindMethods(head)
                .bind("content", content)
                .bind("hash", hash)
                .execute();
    }

    /**
     * The newest records that fit.
     *
     * @param words what each must have somewhere in its head, whatever the case; empty for all
     * @param limit how many at most, 1 to {@value #MOST}
     */
    public List<RecordHead> find(List<String> words, int limit) {
        StringBuilder sql = new StringBuilder("select " + COLUMNS + " from record where 1 = 1");
        for (int i = 0; i < words.size(); i++) {
            sql.append(
                    " and lower(id || ' ' || kind || ' ' || made || ' ' || place || ' ' || vehicle"
                            + " || ' ' || verdict || ' ' || words) like :word");
            sql.append(i).append(" escape '!'");
        }
        sql.append(" order by made desc, number desc limit :limit");
        return jdbi.withHandle(
                handle -> {
                    var query = handle.createQuery(sql.toString());
                    for (int i = 0; i < words.size(); i++) {
                        query.bind("word" + i, "%" + plain(words.get(i)) + "%");
                    }
                    return query.bind("limit", Math.max(1, Math.min(MOST, limit))).map(HEAD).list();
                });
    }

    /** A word as it is, where signs of a pattern mean themselves. */
    private static String plain(String word) {
        return word.toLowerCase(java.util.Locale.ROOT)
                .replace("!", "!!")
                .replace("%", "!%")
                .replace("_", "!_");
    }

    /** A record by its id, empty if there is none. */
    public Optional<KeptRecord> byId(String id) {
        return jdbi.withHandle(
                handle ->
                        handle.createQuery("select * from record where id = :id")
                                .bind("id", id)
                                .map(
                                        (row, context) ->
                                                new KeptRecord(
                                                        row.getLong("number"),
                                                        HEAD.map(row, context),
                                                        row.getString("content"),
                                                        row.getString("hash")))
                                .findOne());
    }

    /** Whether it can be read and written now; writes nothing. */
    public StoreState state() {
        try {
            // A transaction begins with the lock of a writer, which a full or broken disk refuses.
            long records =
                    jdbi.inTransaction(
                            handle ->
                                    handle.createQuery("select count(*) from record")
                                            .mapTo(Long.class)
                                            .one());
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
