package org.fandown.app.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import java.util.Optional;
import org.fandown.app.store.AuditEntry;
import org.fandown.app.store.AuditTrail;
import org.fandown.document.Json;
import org.fandown.document.Tree;

/** The audit trail as a list, the newest first. */
final class AuditApi {
    private final AuditTrail trail;

    AuditApi(AuditTrail trail) {
        this.trail = trail;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/api/audit", this::list);
    }

    private void list(Context ctx) {
        Tree.ListBuilder list = Tree.list();
        trail.before(before(ctx)).forEach(noted -> list.add(map(noted)));
        ctx.contentType("application/json");
        ctx.result(Json.writeCompact(Tree.map().put("entries", list).build()));
    }

    private static long before(Context ctx) {
        String text = Optional.ofNullable(ctx.queryParam("before")).orElse("");
        if (text.isEmpty()) {
            return Long.MAX_VALUE;
        }
        if (!text.matches("\\d{1,18}")) {
            throw new BadRequestResponse("'before' is the number of an entry.");
        }
        return Long.parseLong(text);
    }

    private static Tree.MapBuilder map(AuditTrail.Noted noted) {
        AuditEntry entry = noted.entry();
        return Tree.map()
                .put("number", noted.number())
                .put("moment", noted.moment())
                .put("who", entry.who())
                .put("act", entry.act())
                .put("about", entry.about())
                .put("source", entry.source())
                .put("result", entry.result());
    }
}
