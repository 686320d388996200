package org.fandown.app.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;

/** One file of the site, as it is and as it travels. */
final class SiteFile {
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

    private final String type;
    private final byte[] bytes;
    private final byte[] packed;
    private final String tag;

    private SiteFile(String type, byte[] bytes, byte[] packed, String tag) {
        this.type = type;
        this.bytes = bytes;
        this.packed = packed;
        this.tag = tag;
    }

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

    /** Its media type. */
    String type() {
        return type;
    }

    /** Its content; not to be changed. */
    byte[] bytes() {
        return bytes;
    }

    /** Its content by gzip, or the content itself where that is not larger; not to be changed. */
    byte[] packed() {
        return packed;
    }

    /** A name that changes with the content, for {@code ETag}. */
    String tag() {
        return tag;
    }

    /** Whether the packed form is another. */
    boolean isPacked() {
        return packed != bytes;
    }

    private static byte[] gzip(byte[] bytes) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new Tight(out)) {
            zip.write(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException("Memory cannot be written.", e);
        }
        return out.toByteArray();
    }

    /** As small as it can be: a file is packed once and sent many times. */
    private static final class Tight extends GZIPOutputStream {
        Tight(ByteArrayOutputStream out) throws IOException {
            super(out);
            def.setLevel(Deflater.BEST_COMPRESSION);
        }
    }
}
