package org.fandown.document;

import java.util.List;
import java.util.Map;

/** Writes one document as JSON. */
final class JsonWriter {
    private static final String HEX = "0123456789abcdef";
    private static final char DELETE = 0x7f;

    private final StringBuilder out = new StringBuilder();
    private final boolean pretty;

    JsonWriter(boolean pretty) {
        this.pretty = pretty;
    }

    String write(Node node) {
        node(node, 0);
        return out.toString();
    }

    private void node(Node node, int depth) {
        if (node instanceof MapNode map) {
            map(map, depth);
        } else if (node instanceof ListNode list) {
            list(list.items(), depth);
        } else if (node instanceof ScalarNode scalar) {
            if (scalar.kind() == ScalarNode.Kind.TEXT) {
                text(scalar.text());
            } else {
                out.append(scalar.text());
            }
        }
    }

    private void map(MapNode map, int depth) {
        if (map.entries().isEmpty()) {
            out.append("{}");
            return;
        }
        char open = '{';
        for (Map.Entry<String, MapNode.Entry> entry : map.entries().entrySet()) {
            out.append(open);
            newLine(depth + 1);
            text(entry.getKey());
            out.append(pretty ? ": " : ":");
            node(entry.getValue().value(), depth + 1);
            open = ',';
        }
        newLine(depth);
        out.append('}');
    }

    private void list(List<Node> items, int depth) {
        if (items.isEmpty()) {
            out.append("[]");
            return;
        }
        char open = '[';
        for (Node item : items) {
            out.append(open);
            newLine(depth + 1);
            node(item, depth + 1);
            open = ',';
        }
        newLine(depth);
        out.append(']');
    }

    private void newLine(int depth) {
        if (pretty) {
            out.append('\n').append("  ".repeat(depth));
        }
    }

    private void text(String text) {
        out.append('"');
        int written = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (isEscaped(c)) {
                out.append(text, written, i);
                escape(c);
                written = i + 1;
            }
        }
        out.append(text, written, text.length()).append('"');
    }

    private static boolean isEscaped(char c) {
        return c < ' ' || c == '"' || c == '\\' || c == DELETE;
    }

    private void escape(char c) {
        switch (c) {
            case '"' -> out.append("\\\"");
            case '\\' -> out.append("\\\\");
            case '\n' -> out.append("\\n");
            case '\r' -> out.append("\\r");
            case '\t' -> out.append("\\t");
            default -> out.append("\\u00").append(HEX.charAt(c >> 4)).append(HEX.charAt(c & 15));
        }
    }
}
