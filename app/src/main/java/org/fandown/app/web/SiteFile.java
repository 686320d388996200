package org.fandown.app.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.GZIPOutputStream;

/**
 * One file of the site.
 *
 * @param type its media type
 * @param bytes its content
 * @param packed its content by gzip; the same array as the content where that is not smaller
 * @param tag a name that changes with the content, for {@code ETag}
 */
record SiteFile(String type, byte[] bytes, byte[] packed, String tag) {
    private static final Map<String, String> TYPES =
            Map.of(
                    "html", "text/html; charset=utf-8",
                    "css", "text/css; charset=utf-8",
                    "js", "text/javascript; charset=utf-8",
                    "mjs", "text/javascript; charset=utf-8",
                    "json", "application/json; charset=utf-8",
                    "svg", "image/svg+xml",
                    "png", "image/png",
                    "wasm", "application/wasm",
                    "webmanifest", "application/manifest+json");

    /** A file, whose suffix says its type. */
    static SiteFile of(String path, byte[] bytes) {
        String suffix = path.substring(path.lastIndexOf('.') + 1);
        CRC32 crc = new CRC32();
        crc.update(bytes);
        String tag = "\"" + Long.toHexString(crc.getValue()) + "-" + bytes.length + "\"";
        byte[] packed = gzip(bytes);
        return new SiteFile(
                TYPES.getOrDefault(suffix, "text/plain; charset=utf-8"),
                bytes,
                packed.length < bytes.length ? packed : bytes,
                tag);
    }

    /** Whether the packed form is another. */
    boolean isPacked() {
        return packed != bytes;
    }

    private static byte[] gzip(byte[] bytes) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(out)) {
            zip.write(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException("Memory cannot be written.", e);
        }
        return out.toByteArray();
    }
}
