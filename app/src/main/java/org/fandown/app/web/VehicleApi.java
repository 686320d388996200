package org.fandown.app.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Optional;
import org.fandown.app.files.DocumentText;
import org.fandown.document.DocumentException;
import org.fandown.document.Json;
import org.fandown.document.Tree;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleDocument;
import org.fandown.vehicle.VehicleReader;

/**
 * Reads vehicle files for pages: a page has no reader of YAML, and so says the same of a file as
 * the command line. Nothing is kept here.
 */
final class VehicleApi {
    private VehicleApi() {}

    static void addTo(RoutesConfig routes) {
        routes.post("/api/vehicle-file", VehicleApi::read);
    }

    private static void read(Context ctx) {
        String name = Optional.ofNullable(ctx.queryParam("name")).orElse("");
        try {
            Vehicle vehicle =
                    VehicleReader.read(DocumentText.of(name, Bodies.bytes(ctx, Bodies.MOST)));
            ctx.contentType("application/json");
            ctx.result(
                    Json.writeCompact(
                            Tree.map()
                                    .put("name", vehicle.name())
                                    .put("vehicle", VehicleDocument.toTree(vehicle))
                                    .build()));
        } catch (DocumentException e) {
            ctx.status(HttpStatus.BAD_REQUEST);
            ctx.contentType("text/plain; charset=utf-8");
            ctx.result(String.valueOf(e.getMessage()));
        }
    }
}
