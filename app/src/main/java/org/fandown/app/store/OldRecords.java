package org.fandown.app.store;

import java.util.List;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.evidence.InspectionReader;
import org.fandown.evidence.VehicleSource;
import org.fandown.record.VehicleKey;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.migration.Context;
import org.flywaydb.core.api.migration.JavaMigration;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jspecify.annotations.Nullable;

/**
 * Seals the records of a store from before there were seals, in the order of their arrival. What
 * the judge said then is known by its verdict alone.
 */
final class OldRecords implements JavaMigration {
    @Override
    public MigrationVersion getVersion() {
        return MigrationVersion.fromVersion("2.2");
    }

    @Override
    public String getDescription() {
        return "seal old records";
    }

    @Override
    public @Nullable Integer getChecksum() {
        return null;
    }

    @Override
    public boolean canExecuteInTransaction() {
        return true;
    }

    @Override
    public void migrate(Context context) {
        Jdbi.create(context.getConnection()).useHandle(OldRecords::seal);
    }

    private static void seal(Handle handle) {
        List<Long> numbers =
                handle.createQuery("select number from record_1 order by number")
                        .mapTo(Long.class)
                        .list();
        ChainWriter chains = new ChainWriter(handle);
        numbers.forEach(number -> chains.keep(old(handle, number)));
        handle.execute("drop table record_1");
    }

    private static Unsealed old(Handle handle, long number) {
        return handle.createQuery("select * from record_1 where number = :number")
                .bind("number", number)
                .map(
                        (row, context) -> {
                            String content = RecordRows.text(row, "content");
                            if (!Unsealed.hash(content).equals(RecordRows.text(row, "hash"))) {
                                throw altered(number);
                            }
                            return Unsealed.of(arrival(RecordRows.head(row), content, number));
                        })
                .one();
    }

    private static Arrival arrival(RecordHead head, String content, long number) {
        try {
            Node node = Json.read("record " + number, content);
            return new Arrival(head, node, null, vehicle(node, head), "");
        } catch (DocumentException e) {
            throw altered(number);
        }
    }

    private static String vehicle(Node record, RecordHead head) {
        try {
            Node inspection = Fields.of(record).node("inspection");
            return VehicleKey.of(new InspectionReader(VehicleSource.NONE).read(inspection));
        } catch (DocumentException e) {
            // The program of then took it; by that of now its name is all that is known.
            return head.vehicle();
        }
    }

    private static StoreException altered(long number) {
        return new StoreException(
                "Record "
                        + number
                        + " is not what was kept, so it cannot be sealed. Next: go back to a copy"
                        + " from before it was altered.",
                null);
    }
}
