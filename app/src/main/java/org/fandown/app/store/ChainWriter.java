package org.fandown.app.store;

import java.util.Optional;
import org.fandown.record.Seal;
import org.jdbi.v3.core.Handle;

/** Adds records at the end of the chains, within one transaction that lets nobody else write. */
final class ChainWriter {
    private static final String HASH_OF_LAST =
            "select hash from seal %s order by number desc limit 1";

    private final Handle handle;
    private long number;
    private String site;

    /**
     * Begins after the last record that is kept.
     *
     * @param handle within a transaction that has claimed the database
     */
    ChainWriter(Handle handle) {
        this.handle = handle;
        number =
                handle.createQuery("select coalesce(max(number), 0) from seal")
                        .mapTo(Long.class)
                        .one();
        site =
                handle.createQuery(HASH_OF_LAST.formatted(""))
                        .mapTo(String.class)
                        .findOne()
                        .orElse("");
    }

    /** Adds a record, unless one with its id is kept. */
    Kept keep(Unsealed record) {
        Optional<String> kept =
                handle.createQuery(
                                "select content_hash from record join seal using (number)"
                                        + " where id = :id")
                        .bind("id", record.head().id())
                        .mapTo(String.class)
                        .findOne();
        if (kept.isPresent()) {
            return kept.get().equals(record.contentHash()) ? Kept.BEFORE : Kept.CONFLICT;
        }
        add(record);
        return Kept.NEW;
    }

    private void add(Unsealed record) {
        String chainBefore =
                handle.createQuery(HASH_OF_LAST.formatted("where chain = :chain"))
                        .bind("chain", record.chain())
                        .mapTo(String.class)
                        .findOne()
                        .orElse("");
        Seal seal = record.sealed(number + 1, site, chainBefore);
        RecordRows.insert(
                handle, seal.number(), record.head(), record.content(), record.statement());
        RecordRows.insert(handle, seal, seal.hash());
        number = seal.number();
        site = seal.hash();
    }
}
