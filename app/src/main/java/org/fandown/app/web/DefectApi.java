package org.fandown.app.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import org.fandown.app.store.KeptRecord;
import org.fandown.app.store.RecordStore;
import org.fandown.document.Fields;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.document.Tree;
import org.fandown.record.DefectStory;
import org.fandown.record.VehicleKey;

/** What devices can ask about defects: those of a report with their stories, those still open. */
final class DefectApi {
    private final RecordStore store;
    private final DefectDesk desk;

    DefectApi(RecordStore store, DefectDesk desk) {
        this.store = store;
        this.desk = desk;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/api/records/{id}/defects", this::ofReport);
        routes.get("/api/defects", this::open);
    }

    /** The defects of a report with what became of each, and the dates that follow from it. */
    private void ofReport(Context ctx) {
        KeptRecord record =
                store.byId(ctx.pathParam("id"))
                        .orElseThrow(() -> new NotFoundResponse("There is no such record."));
        Fields statement = Fields.of(Json.read("statement.json", record.statement()));
        Tree.MapBuilder map =
                Tree.map()
                        .put(
                                "defects",
                                stories(desk.of(record.seal().vehicle(), record.head().id())))
                        .put("verdict", record.head().verdict());
        if (statement.has("judgement")) {
            Fields judgement = statement.fields("judgement");
            for (String key : List.of("dates", "because", "earlier-defects")) {
                judgement.optionalNode(key).ifPresent(node -> map.put(key, node));
            }
        }
        answer(ctx, map.build());
    }

    /** What is open of each vehicle named by {@code plate}, which may be there several times. */
    private void open(Context ctx) {
        Tree.ListBuilder list = Tree.list();
        for (String plate : ctx.queryParams("plate")) {
            for (DefectStory story : desk.open(VehicleKey.plain(plate))) {
                list.add(story.earlier().document());
            }
        }
        answer(ctx, Tree.map().put("defects", list).build());
    }

    private static Tree.ListBuilder stories(List<DefectStory> stories) {
        Tree.ListBuilder list = Tree.list();
        stories.forEach(story -> list.add(story.document()));
        return list;
    }

    private static void answer(Context ctx, Node node) {
        ctx.contentType("application/json");
        ctx.result(Json.writeCompact(node));
    }
}
