package org.fandown.app.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.fandown.app.files.DocumentText;
import org.fandown.app.files.RulePacks;
import org.fandown.app.keys.SiteKey;
import org.fandown.app.paper.RecordReport;
import org.fandown.app.paper.ReportContent;
import org.fandown.app.paper.ReportPdf;
import org.fandown.app.store.AuditTrail;
import org.fandown.app.store.Kept;
import org.fandown.app.store.KeptRecord;
import org.fandown.app.store.RecordHead;
import org.fandown.app.store.RecordStore;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Json;
import org.fandown.document.Names;
import org.fandown.document.Node;
import org.fandown.document.Tree;

/** What devices can ask about records: keep these, find, open, print. */
final class RecordApi {
    private static final int USUAL = 100;

    private final RecordStore store;
    private final AuditTrail audit;
    private final RulePacks packs;
    private final Supplier<SiteKey> key;
    private final DefectDesk desk;
    private final SentSettlement after;

    RecordApi(RecordStore store, AuditTrail audit, RulePacks packs, Supplier<SiteKey> key) {
        this.store = store;
        this.audit = audit;
        this.packs = packs;
        this.key = key;
        this.desk = new DefectDesk(store);
        this.after = new SentSettlement(store, desk);
    }

    void addTo(RoutesConfig routes) {
        routes.post("/api/records", this::keep);
        routes.get("/api/records", this::find);
        routes.get("/api/records/{id}", this::open);
        routes.get("/api/records/{id}/report.pdf", this::print);
        routes.get("/api/records/{id}/seal", this::seal);
        new DefectApi(store, desk).addTo(routes);
        new HandOverApi(store, this::report).addTo(routes);
    }

    /** Keeps each record on its own; one that is refused does not keep back the others. */
    private void keep(Context ctx) {
        Tree.ListBuilder answers = Tree.list();
        Caller caller = Caller.of(ctx);
        Notes notes = new Notes(caller);
        try {
            byte[] bytes = Bodies.bytes(ctx, Bodies.MOST);
            Fields body = Fields.of(DocumentText.of("records.json", bytes));
            List<Node> sent = body.list("records");
            body.end();
            sent.forEach(node -> answers.add(keep(node, caller, notes)));
        } catch (DocumentException e) {
            throw new BadRequestResponse(String.valueOf(e.getMessage()));
        }
        if (!caller.alone()) {
            notes.keepIn(audit);
        }
        json(ctx, Tree.map().put("records", answers).build());
    }

    private Tree.MapBuilder keep(Node node, Caller caller, Notes notes) {
        try {
            SentRecord record = SentRecord.read(node, packs, after);
            RecordHead head = record.head();
            if (!RecordRights.mayKeep(caller, head.kind())) {
                notes.add("record-keep", head.id(), "not allowed");
                return Tree.map().put("id", head.id()).put("kept", "not-allowed");
            }
            Kept kept = store.keep(record.from(caller.name()));
            notes.add("record-keep", head.id(), Names.kebab(kept));
            return Tree.map().put("id", record.head().id()).put("kept", Names.kebab(kept));
        } catch (DocumentException e) {
            return Tree.map().put("kept", "refused").put("reason", String.valueOf(e.getMessage()));
        }
    }

    private void find(Context ctx) {
        String words = Optional.ofNullable(ctx.queryParam("words")).orElse("").strip();
        List<String> each = words.isEmpty() ? List.of() : List.of(words.split("\\s+"));
        Tree.ListBuilder list = Tree.list();
        Caller caller = Caller.of(ctx);
        List<String> kinds = ctx.queryParams("kind");
        boolean own = RecordRights.onlyOwn(caller);
        List<RecordHead> found =
                own
                        ? store.findOf(caller.name(), RecordRights.ownKinds(kinds), each, USUAL)
                        : store.find(kinds, each, USUAL);
        found.forEach(head -> list.add(map(head)));
        long count = own ? found.size() : store.count();
        json(ctx, Tree.map().put("count", count).put("records", list).build());
    }

    private static Tree.MapBuilder map(RecordHead head) {
        return Tree.map()
                .put("id", head.id())
                .put("kind", head.kind())
                .put("made", head.made())
                .put("received", head.received())
                .put("place", head.place())
                .put("vehicle", head.vehicle())
                .put("verdict", head.verdict())
                .put("words", head.words());
    }

    private void open(Context ctx) {
        KeptRecord record = record(ctx);
        ctx.contentType("application/json");
        ctx.result(record.content());
    }

    /** What proves that the record is as it was kept, and what was said of it then. */
    private void seal(Context ctx) {
        KeptRecord record = record(ctx);
        json(
                ctx,
                Tree.map()
                        .put("seal", record.seal().document())
                        .put("hash", record.seal().hash())
                        .put("statement", Json.read("statement.json", record.statement()))
                        .build());
    }

    private void print(Context ctx) {
        KeptRecord record = record(ctx);
        if (!record.head().kind().equals(Names.kebab(SentRecord.Kind.INSPECTION))) {
            throw new NotFoundResponse(
                    "This is no inspection of a vehicle, and has no report. Next: open it under"
                            + " Records.");
        }
        ctx.contentType("application/pdf");
        ctx.header("Content-Disposition", "inline; filename=\"report.pdf\"");
        ctx.result(report(record));
    }

    /** The signed report of an inspection. */
    private byte[] report(KeptRecord record) {
        ReportContent content =
                RecordReport.of(
                                Json.read("record.json", record.content()),
                                DefectDesk.earlier(record),
                                packs)
                        .orElseThrow(() -> new NotFoundResponse("Its place has no rule pack now."))
                        .sealed(record.seal().document());
        return ReportPdf.signed(content, key.get(), OffsetDateTime.now(ZoneOffset.UTC));
    }

    private KeptRecord record(Context ctx) {
        return store.byId(ctx.pathParam("id"))
                .filter(kept -> RecordRights.mayRead(Caller.of(ctx), kept))
                .orElseThrow(() -> new NotFoundResponse("There is no such record."));
    }

    private static void json(Context ctx, Node node) {
        ctx.status(HttpStatus.OK);
        ctx.contentType("application/json");
        ctx.result(Json.writeCompact(node));
    }
}
