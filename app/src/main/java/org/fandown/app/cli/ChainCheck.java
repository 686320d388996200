package org.fandown.app.cli;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.fandown.app.files.Sha256;
import org.fandown.app.paper.CheckLine;
import org.fandown.app.paper.CheckedReport;
import org.fandown.app.store.KeptRecord;
import org.fandown.app.store.Store;
import org.fandown.app.store.StoreCheck;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Json;
import org.fandown.record.Seal;

/** Checks the place of a report's record in the chains of the site. */
final class ChainCheck {
    private static final String CHAIN = "chain";

    private final CheckedReport report;

    ChainCheck(CheckedReport report) {
        this.report = report;
    }

    /** The id of the record, empty if it was judged from a file and kept nowhere. */
    Optional<String> id() {
        return report.record()
                .flatMap(record -> Fields.of(Json.read("record.json", record)).optionalText("id"));
    }

    /** What came of it; nothing where there is no record that could be in a chain. */
    List<CheckLine> lines(Optional<Store> store) {
        Optional<String> id = id();
        if (id.isEmpty()) {
            return List.of();
        }
        String record = report.record().orElseThrow();
        String hash = Sha256.of(record.getBytes(StandardCharsets.UTF_8));
        Optional<CheckLine> wrong = seal(hash);
        if (wrong.isPresent()) {
            return List.of(wrong.get());
        }
        return List.of(store.map(open -> kept(open, id.get(), hash)).orElseGet(this::withoutStore));
    }

    private CheckLine withoutStore() {
        return report.seal().isPresent()
                ? CheckLine.ok(
                        CHAIN,
                        "seal.json belongs to the record; with the site's records, named by"
                                + " --data, the chain itself is checked too")
                : CheckLine.notChecked(
                        CHAIN,
                        "no seal is in the document. Next: name the site's records with --data");
    }

    /** What is wrong with the seal, empty if nothing is or none is there. */
    private Optional<CheckLine> seal(String hash) {
        if (report.seal().isEmpty()) {
            return Optional.empty();
        }
        try {
            Seal seal = Seal.read(Json.read("seal.json", report.seal().get()));
            return seal.record().equals(hash)
                    ? Optional.empty()
                    : Optional.of(CheckLine.notOk(CHAIN, "seal.json is that of another record"));
        } catch (DocumentException e) {
            return Optional.of(CheckLine.notOk(CHAIN, "seal.json is no seal"));
        }
    }

    private CheckLine kept(Store store, String id, String hash) {
        Optional<KeptRecord> kept = store.records().byId(id);
        if (kept.isEmpty()) {
            return CheckLine.notOk(CHAIN, "no record " + id + " is kept in " + store.place());
        }
        Seal seal = kept.get().seal();
        if (!seal.record().equals(hash) || isOfAnother(seal)) {
            return CheckLine.notOk(
                    CHAIN, "the record " + id + " kept in " + store.place() + " is another");
        }
        StoreCheck whole = store.records().check();
        return whole.problem()
                .map(problem -> CheckLine.notOk(CHAIN, "the chain is broken: " + problem))
                .orElseGet(
                        () ->
                                CheckLine.ok(
                                        CHAIN,
                                        "kept as number "
                                                + seal.number()
                                                + " of "
                                                + whole.records()
                                                + ", received "
                                                + seal.received()
                                                + "; the chain of the site is whole, its end "
                                                + whole.end()));
    }

    private boolean isOfAnother(Seal kept) {
        return report.seal()
                .map(text -> !Seal.read(Json.read("seal.json", text)).hash().equals(kept.hash()))
                .orElse(false);
    }
}
