package org.fandown.app.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.document.ListNode;
import org.fandown.document.MapNode;
import org.fandown.document.Node;
import org.fandown.document.Paths;
import org.fandown.document.Position;
import org.fandown.document.ScalarNode;
import org.fandown.document.ScalarNode.Kind;
import org.snakeyaml.engine.v2.common.SpecVersion;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;

/**
 * Reads one YAML text from the events of the parser, so that every node has its place and nothing
 * is resolved behind our back; made anew for each text.
 */
final class YamlReader {
    private static final int MAX_DEPTH = 64;

    private final YamlEvents events;

    YamlReader(YamlEvents events) {
        this.events = events;
    }

    Node read() {
        events.next();
        Event start = events.next();
        if (!(start instanceof DocumentStartEvent document)) {
            throw events.refuse(start, "", "the file is empty", "one document", "write something");
        }
        requireVersion(document);
        Node top = node(events.next(), "", 0);
        events.next();
        Event end = events.next();
        if (end instanceof DocumentStartEvent) {
            throw events.refuse(
                    end, "", "a second document begins", "one document", "split the file");
        }
        return top;
    }

    private void requireVersion(DocumentStartEvent document) {
        Optional<SpecVersion> version = document.getSpecVersion();
        boolean other = version.isPresent() && version.get().getMinor() != 2;
        if (other || !document.getTags().isEmpty()) {
            String step = "remove the lines that begin with %";
            throw events.refuse(document, "", "a directive stands here", "YAML 1.2", step);
        }
    }

    private Node node(Event event, String path, int depth) {
        if (event instanceof AliasEvent) {
            String step = "write the value out";
            throw events.refuse(event, path, "an alias stands here", "a value", step);
        }
        if (event instanceof NodeEvent named && named.getAnchor().isPresent()) {
            String step = "remove the '&' and the name after it";
            throw events.refuse(event, path, "an anchor stands here", "a value", step);
        }
        if (event instanceof ScalarEvent scalar) {
            return scalar(scalar, path);
        }
        CollectionStartEvent collection = (CollectionStartEvent) event;
        events.requireNoTag(event, collection.getTag(), path);
        if (depth == MAX_DEPTH) {
            String allowed = "at most " + MAX_DEPTH + " levels";
            String step = "make the document flatter";
            throw events.refuse(event, path, "the document is nested too deeply", allowed, step);
        }
        return event.getEventId() == Event.ID.MappingStart
                ? map(event, path, depth + 1)
                : list(event, path, depth + 1);
    }

    private MapNode map(Event start, String path, int depth) {
        Map<String, MapNode.Entry> entries = new LinkedHashMap<>();
        Event event = events.next();
        while (event.getEventId() != Event.ID.MappingEnd) {
            String key = key(event, path);
            String keyPath = Paths.key(path, key);
            if (entries.containsKey(key)) {
                String step = "remove one of the two";
                throw events.refuse(event, keyPath, "the key stands twice", "each key once", step);
            }
            Node value = node(events.next(), keyPath, depth);
            entries.put(key, new MapNode.Entry(events.position(event), value));
            event = events.next();
        }
        return new MapNode(entries, events.position(start), path);
    }

    private String key(Event event, String path) {
        String allowed = "a key that is a text on one line";
        if (!(event instanceof ScalarEvent scalar) || scalar.getAnchor().isPresent()) {
            String step = "write a text, a colon and the value";
            throw events.refuse(event, path, "this cannot be a key", allowed, step);
        }
        events.requireNoTag(event, scalar.getTag(), path);
        String key = scalar.getValue();
        if (scalar.isPlain() && key.equals("<<")) {
            throw events.refuse(
                    event, path, "a merge key stands here", allowed, "write the keys out");
        }
        if (scalar.isPlain() && key.isEmpty()) {
            throw events.refuse(
                    event, path, "the key is missing", allowed, "write it before the colon");
        }
        events.requireText(event, key, path);
        return key;
    }

    private ListNode list(Event start, String path, int depth) {
        List<Node> items = new ArrayList<>();
        Event event = events.next();
        while (event.getEventId() != Event.ID.SequenceEnd) {
            items.add(node(event, Paths.item(path, items.size()), depth));
            event = events.next();
        }
        return new ListNode(items, events.position(start), path);
    }

    private ScalarNode scalar(ScalarEvent event, String path) {
        events.requireNoTag(event, event.getTag(), path);
        String value = event.getValue();
        events.requireText(event, value, path);
        Position at = events.position(event);
        if (!event.isPlain()) {
            return new ScalarNode(value, Kind.TEXT, at, path);
        }
        return switch (value) {
            case "", "~", "null", "Null", "NULL" -> new ScalarNode("null", Kind.NOTHING, at, path);
            case "true", "True", "TRUE" -> new ScalarNode("true", Kind.TRUTH, at, path);
            case "false", "False", "FALSE" -> new ScalarNode("false", Kind.TRUTH, at, path);
            default -> {
                Kind kind = ScalarNode.isNumber(value) ? Kind.NUMBER : Kind.TEXT;
                yield new ScalarNode(value, kind, at, path);
            }
        };
    }
}
