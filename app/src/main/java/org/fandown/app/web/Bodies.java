package org.fandown.app.web;

import io.javalin.http.BadRequestResponse;
import io.javalin.http.ContentTooLargeResponse;
import io.javalin.http.Context;
import io.javalin.http.Header;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.fandown.app.files.DocumentText;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;

/** What devices send, never more of it in memory than is allowed, however it is sent. */
final class Bodies {
    /** The most a device sends at once, with photos: 32 MiB. */
    static final int MOST = 32 * 1024 * 1024;

    /** The most a form of ours sends: 8 KiB. */
    private static final int FORM = 8 * 1024;

    private Bodies() {}

    /** The whole of what was sent. */
    static byte[] bytes(Context ctx, int most) {
        if (ctx.contentLength() > most) {
            throw tooLarge(most);
        }
        try (InputStream body = ctx.bodyInputStream()) {
            byte[] bytes = body.readNBytes(most);
            if (body.read() >= 0) {
                throw tooLarge(most);
            }
            return bytes;
        } catch (IOException e) {
            throw new UncheckedIOException("The device went away while it sent.", e);
        }
    }

    private static ContentTooLargeResponse tooLarge(int most) {
        return new ContentTooLargeResponse("At most " + most + " bytes are taken at once.");
    }

    /**
     * Reads a small map of JSON. A plain form of another site cannot send such a thing without
     * asking first.
     */
    static <T> T form(Context ctx, Function<Fields, T> reader) {
        String type = Optional.ofNullable(ctx.header(Header.CONTENT_TYPE)).orElse("");
        if (!type.toLowerCase(Locale.ROOT).startsWith("application/json")) {
            throw new HttpResponseException(
                    HttpStatus.UNSUPPORTED_MEDIA_TYPE.getCode(), "Allowed: application/json.");
        }
        byte[] bytes = bytes(ctx, FORM);
        try {
            Fields fields = Fields.of(DocumentText.of("sent.json", bytes));
            T read = reader.apply(fields);
            fields.end();
            return read;
        } catch (DocumentException e) {
            throw new BadRequestResponse(String.valueOf(e.getMessage()));
        }
    }
}
