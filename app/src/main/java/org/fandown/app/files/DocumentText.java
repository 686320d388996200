package org.fandown.app.files;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.fandown.document.DocumentException;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.document.Position;

/** Reads documents that are in memory already, such as resources of the program. */
public final class DocumentText {
    private static final char BYTE_ORDER_MARK = '\ufeff';

    private DocumentText() {}

    /**
     * Reads the bytes of a document in UTF-8; a byte order mark at the start is dropped.
     *
     * @param file the name, whose suffix {@code .yaml}, {@code .yml} or {@code .json} says how the
     *     document is written
     * @param bytes the whole document
     * @return the document, each node with its position and path
     * @throws DocumentException if the suffix is another, or the bytes are not such a document
     */
    public static Node of(String file, byte[] bytes) {
        boolean json = requireKnownSuffix(file).equals(".json");
        String text = decode(file, bytes);
        if (!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK) {
            text = text.substring(1);
        }
        return json ? Json.read(file, text) : yaml(file, text);
    }

    /**
     * Reads a text as YAML 1.2 with the rules of its core schema, but for what would let two
     * readers differ: anchors, aliases, merge keys, tags, keys that are no scalars, repeated keys
     * and more than one document are refused, and so is nesting over 64 levels. A plain scalar is a
     * number only in the notation of JSON; {@code 0x1F}, {@code 012} or {@code .inf} stay text.
     *
     * @param file the name of the file, for positions and messages
     * @param text the whole text
     * @return the document, each node with its position and path
     * @throws DocumentException if the text is not one such document
     */
    public static Node yaml(String file, String text) {
        return new YamlReader(new YamlEvents(file, text)).read();
    }

    /** Returns the suffix in lower case, or refuses the name. */
    static String requireKnownSuffix(String file) {
        String name = file.toLowerCase(Locale.ROOT);
        for (String suffix : new String[] {".yaml", ".yml", ".json"}) {
            if (name.endsWith(suffix)) {
                return suffix;
            }
        }
        throw new DocumentException(
                Position.inFile(file),
                "",
                "",
                "the name does not say how the file is written",
                "a name that ends in .yaml, .yml or .json",
                "name the right file, or rename it");
    }

    private static String decode(String file, byte[] bytes) {
        CharsetDecoder decoder =
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        if (result.isError()) {
            throw new DocumentException(
                    new Position(file, line(bytes, in.position()), 0),
                    "",
                    "",
                    "the bytes here are not UTF-8",
                    "a text file in UTF-8",
                    "save the file again as UTF-8");
        }
        return out.flip().toString();
    }

    private static int line(byte[] bytes, int end) {
        int line = 1;
        for (int i = 0; i < end; i++) {
            boolean loneReturn =
                    bytes[i] == '\r' && (i + 1 == bytes.length || bytes[i + 1] != '\n');
            if (bytes[i] == '\n' || loneReturn) {
                line++;
            }
        }
        return line;
    }
}
