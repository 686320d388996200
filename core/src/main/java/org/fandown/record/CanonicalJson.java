package org.fandown.record;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.fandown.document.ListNode;
import org.fandown.document.MapNode;
import org.fandown.document.Node;
import org.fandown.document.ScalarNode;

/**
 * Writes a document in the one form that its hash is taken of: no spaces, keys in the order of
 * their UTF-16 code units, numbers in the shortest form, only those characters escaped that must
 * be. Equal content gives equal text, whoever wrote it.
 *
 * <p><i>Source:</i> RFC 8785, JSON Canonicalization Scheme, June 2020.
 */
public final class CanonicalJson {
    private static final String HEX = "0123456789abcdef";

    private final StringBuilder out = new StringBuilder();

    private CanonicalJson() {}

    /**
     * Writes a document.
     *
     * @param node the document; a number counts as the double next to it
     * @return its canonical text
     * @throws IllegalArgumentException if a number is too large for a double
     */
    public static String write(Node node) {
        CanonicalJson writer = new CanonicalJson();
        writer.node(node);
        return writer.out.toString();
    }

    private void node(Node node) {
        if (node instanceof MapNode map) {
            map(map);
        } else if (node instanceof ListNode list) {
            list(list.items());
        } else if (node instanceof ScalarNode scalar) {
            scalar(scalar);
        }
    }

    private void map(MapNode map) {
        out.append('{');
        boolean later = false;
        for (Map.Entry<String, MapNode.Entry> entry : new TreeMap<>(map.entries()).entrySet()) {
            out.append(later ? "," : "");
            later = true;
            text(entry.getKey());
            out.append(':');
            node(entry.getValue().value());
        }
        out.append('}');
    }

    private void list(List<Node> items) {
        out.append('[');
        for (int i = 0; i < items.size(); i++) {
            out.append(i > 0 ? "," : "");
            node(items.get(i));
        }
        out.append(']');
    }

    private void scalar(ScalarNode scalar) {
        switch (scalar.kind()) {
            case TEXT -> text(scalar.text());
            case NUMBER -> out.append(CanonicalNumber.of(scalar.text()));
            case TRUTH, NOTHING -> out.append(scalar.text());
        }
    }

    private void text(String text) {
        out.append('"');
        int written = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' || c == '"' || c == '\\') {
                out.append(text, written, i);
                escape(c);
                written = i + 1;
            }
        }
        out.append(text, written, text.length()).append('"');
    }

    private void escape(char c) {
        switch (c) {
            case '"' -> out.append("\\\"");
            case '\\' -> out.append("\\\\");
            case '\b' -> out.append("\\b");
            case '\t' -> out.append("\\t");
            case '\n' -> out.append("\\n");
            case '\f' -> out.append("\\f");
            case '\r' -> out.append("\\r");
            default -> out.append("\\u00").append(HEX.charAt(c >> 4)).append(HEX.charAt(c & 15));
        }
    }
}
