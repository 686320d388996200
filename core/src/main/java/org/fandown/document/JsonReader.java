package org.fandown.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fandown.document.ScalarNode.Kind;

/** Reads one JSON text; made anew for each. */
final class JsonReader {
    private static final int MAX_DEPTH = 64;
    private static final int END = -1;

    private final JsonSource source;

    JsonReader(String file, String text) {
        this.source = new JsonSource(file, text);
    }

    Node read() {
        source.skipSpace();
        Node top = value("", 0);
        source.skipSpace();
        if (source.peek() != END) {
            throw unexpected("", "the end of the file", "remove what follows the document");
        }
        return top;
    }

    private Node value(String path, int depth) {
        int c = source.peek();
        if (c == '{' || c == '[') {
            if (depth == MAX_DEPTH) {
                throw new DocumentException(
                        source.position(),
                        path,
                        "",
                        "the document is nested too deeply",
                        "at most " + MAX_DEPTH + " levels",
                        "make the document flatter");
            }
            return c == '{' ? map(path, depth + 1) : list(path, depth + 1);
        }
        Position at = source.position();
        if (c == '"') {
            return new ScalarNode(new JsonText(source, path).read(), Kind.TEXT, at, path);
        }
        return word(path, at);
    }

    private MapNode map(String path, int depth) {
        Position at = source.position();
        Map<String, MapNode.Entry> entries = new LinkedHashMap<>();
        source.advance();
        source.skipSpace();
        if (source.accept('}')) {
            return new MapNode(entries, at, path);
        }
        do {
            source.skipSpace();
            entry(entries, path, depth);
            source.skipSpace();
        } while (source.accept(','));
        if (!source.accept('}')) {
            throw unexpected(path, "',' or '}'", "add the missing character");
        }
        return new MapNode(entries, at, path);
    }

    private void entry(Map<String, MapNode.Entry> entries, String path, int depth) {
        if (source.peek() != '"') {
            String step =
                    switch (source.peek()) {
                        case '}' -> "remove the comma before it";
                        case '/', '#' -> "remove the remark; JSON has none";
                        default -> "put the key in double quotes";
                    };
            throw unexpected(path, "a key in double quotes", step);
        }
        Position keyAt = source.position();
        String key = new JsonText(source, path).read();
        if (entries.containsKey(key)) {
            throw new DocumentException(
                    keyAt,
                    Paths.key(path, key),
                    key,
                    "the key stands twice",
                    "each key once",
                    "remove one of the two");
        }
        source.skipSpace();
        if (!source.accept(':')) {
            throw unexpected(path, "':' after the key", "add the colon");
        }
        source.skipSpace();
        entries.put(key, new MapNode.Entry(keyAt, value(Paths.key(path, key), depth)));
    }

    private ListNode list(String path, int depth) {
        Position at = source.position();
        List<Node> items = new ArrayList<>();
        source.advance();
        source.skipSpace();
        if (source.accept(']')) {
            return new ListNode(items, at, path);
        }
        do {
            source.skipSpace();
            items.add(value(Paths.item(path, items.size()), depth));
            source.skipSpace();
        } while (source.accept(','));
        if (!source.accept(']')) {
            throw unexpected(path, "',' or ']'", "add the missing character");
        }
        return new ListNode(items, at, path);
    }

    private ScalarNode word(String path, Position at) {
        String word = source.word();
        if (word.equals("true") || word.equals("false")) {
            return new ScalarNode(word, Kind.TRUTH, at, path);
        }
        if (word.equals("null")) {
            return new ScalarNode(word, Kind.NOTHING, at, path);
        }
        if (Texts.isJsonNumber(word)) {
            return new ScalarNode(word, Kind.NUMBER, at, path);
        }
        String allowed = "a text in double quotes, a number, true, false, null, '{' or '['";
        if (word.isEmpty()) {
            String step = source.peek() == ']' ? "remove the comma before it" : "write a value";
            throw unexpected(path, allowed, step);
        }
        throw new DocumentException(
                at, path, word, "this is not a value of JSON", allowed, "put a text in quotes");
    }

    private DocumentException unexpected(String path, String allowed, String nextStep) {
        String problem = source.peek() == END ? "the file ends too early" : "unexpected character";
        return new DocumentException(
                source.position(), path, source.found(), problem, allowed, nextStep);
    }
}
