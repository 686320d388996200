package org.fandown.app.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fandown.app.paper.QrCode;
import org.fandown.app.store.KeptRecord;
import org.fandown.app.store.RecordStore;
import org.fandown.record.Seal;

/**
 * The package that is handed over: by the id of a record for who may read it, and by the first
 * digits of its seal's hash for whoever was shown the code, such as an officer at the roadside.
 */
final class HandOverApi {
    /** So many digits nobody guesses, and a short address still holds them. */
    private static final int CODE_DIGITS = 16;

    private static final Pattern CODE = Pattern.compile("[0-9a-f]{" + CODE_DIGITS + "}");

    /** Records of one vehicle that go into a package at most: those of a month and more. */
    private static final int MOST_RECORDS = 60;

    private final RecordStore store;
    private final HandOver.Printer printer;

    HandOverApi(RecordStore store, HandOver.Printer printer) {
        this.store = store;
        this.printer = printer;
    }

    void addTo(RoutesConfig routes) {
        routes.get("/api/records/{id}/hand-over.zip", this::byId);
        routes.get("/api/records/{id}/code.svg", this::code);
        routes.get("/r/{code}", this::byCode);
    }

    private void byId(Context ctx) {
        write(ctx, record(ctx));
    }

    private void byCode(Context ctx) {
        String code = ctx.pathParam("code");
        if (!CODE.matcher(code).matches()) {
            throw new BadRequestResponse(
                    "A code has " + CODE_DIGITS + " digits, 0 to 9 and a to f.");
        }
        write(
                ctx,
                store.bySealHash(code)
                        .orElseThrow(
                                () ->
                                        new NotFoundResponse(
                                                "No record here has this code. Next: look whether"
                                                        + " all of it was copied.")));
    }

    /** The code as a picture that a phone reads, with the address under it. */
    private void code(Context ctx) {
        String hash = record(ctx).seal().hash();
        ctx.contentType("image/svg+xml");
        ctx.result(QrCode.svg("http://" + ctx.host() + "/r/" + hash.substring(0, CODE_DIGITS)));
    }

    private KeptRecord record(Context ctx) {
        return store.byId(ctx.pathParam("id"))
                .orElseThrow(() -> new NotFoundResponse("There is no such record."));
    }

    /** The record and those of its vehicle that came after it; the newest, if they are too many. */
    private void write(Context ctx, KeptRecord from) {
        List<Seal> seals = store.seals(from.seal().vehicle());
        List<Long> numbers =
                seals.stream()
                        .map(Seal::number)
                        .filter(number -> number >= from.seal().number())
                        .toList();
        int skipped = Math.max(1, numbers.size() - MOST_RECORDS + 1);
        ctx.contentType("application/zip");
        ctx.header("Content-Disposition", "attachment; filename=\"hand-over.zip\"");
        try {
            new HandOver(seals, printer)
                    .write(
                            () -> records(from, numbers.subList(skipped, numbers.size())),
                            ctx.outputStream());
        } catch (IOException e) {
            throw new UncheckedIOException("The one who asked is gone.", e);
        }
    }

    private Iterator<KeptRecord> records(KeptRecord first, List<Long> later) {
        return Stream.concat(
                        Stream.of(first),
                        later.stream().map(store::byNumber).flatMap(Optional::stream))
                .iterator();
    }
}
