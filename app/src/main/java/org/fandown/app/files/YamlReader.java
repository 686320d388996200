package org.fandown.app.files;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.document.DocumentException;
import org.fandown.document.ListNode;
import org.fandown.document.MapNode;
import org.fandown.document.Node;
import org.fandown.document.Paths;
import org.fandown.document.Position;
import org.fandown.document.ScalarNode;
import org.fandown.document.ScalarNode.Kind;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.SpecVersion;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads one YAML text from the events of the parser, so that every node has its place and nothing
 * is resolved behind our back; made anew for each text.
 */
final class YamlReader {
    private static final int MAX_DEPTH = 64;

    private final String file;
    private final String text;
    private final Iterator<Event> events;
    private Position last;

    YamlReader(String file, String text) {
        this.file = file;
        this.text = text;
        this.last = Position.inFile(file);
        LoadSettings settings =
                LoadSettings.builder()
                        .setLabel(file)
                        .setUseMarks(true)
                        .setCodePointLimit(Integer.MAX_VALUE)
                        // All at once: the parser copies what it holds at each refill.
                        .setBufferSize(text.length() + 1)
                        .build();
        this.events = new Parse(settings).parseString(text).iterator();
    }

    Node read() {
        YamlProblems.requirePrintable(file, text);
        try {
            return document();
        } catch (MarkedYamlEngineException e) {
            throw YamlProblems.translate(file, text, e);
        } catch (YamlEngineException | IllegalArgumentException e) {
            // The parser lets the second kind slip for an escape beyond the last code point.
            throw YamlProblems.unreadable(last);
        }
    }

    private Event next() {
        Event event = events.next();
        last = position(event);
        return event;
    }

    private Node document() {
        next();
        Event start = next();
        if (!(start instanceof DocumentStartEvent document)) {
            throw refuse(start, "", "the file is empty", "one document", "write it");
        }
        requireVersion(document);
        Node top = node(next(), "", 0);
        next();
        Event end = next();
        if (end instanceof DocumentStartEvent) {
            throw refuse(end, "", "a second document begins", "one document", "split the file");
        }
        return top;
    }

    private void requireVersion(DocumentStartEvent document) {
        Optional<SpecVersion> version = document.getSpecVersion();
        boolean other = version.isPresent() && version.get().getMinor() != 2;
        if (other || !document.getTags().isEmpty()) {
            String step = "remove the lines that begin with %";
            throw refuse(document, "", "a directive stands here", "YAML 1.2", step);
        }
    }

    private Node node(Event event, String path, int depth) {
        if (event instanceof AliasEvent) {
            String step = "write the value out";
            throw refuse(event, path, "an alias stands here", "a value", step);
        }
        if (event instanceof NodeEvent named && named.getAnchor().isPresent()) {
            String step = "remove the '&' and the name after it";
            throw refuse(event, path, "an anchor stands here", "a value", step);
        }
        if (event instanceof ScalarEvent scalar) {
            return scalar(scalar, path);
        }
        CollectionStartEvent collection = (CollectionStartEvent) event;
        requireNoTag(event, collection.getTag(), path);
        if (depth == MAX_DEPTH) {
            String allowed = "at most " + MAX_DEPTH + " levels";
            String step = "make the document flatter";
            throw refuse(event, path, "the document is nested too deeply", allowed, step);
        }
        return event.getEventId() == Event.ID.MappingStart
                ? map(event, path, depth + 1)
                : list(event, path, depth + 1);
    }

    private MapNode map(Event start, String path, int depth) {
        Map<String, MapNode.Entry> entries = new LinkedHashMap<>();
        Event event = next();
        while (event.getEventId() != Event.ID.MappingEnd) {
            String key = key(event, path);
            String keyPath = Paths.key(path, key);
            if (entries.containsKey(key)) {
                String step = "remove one of the two";
                throw refuse(event, keyPath, "the key stands twice", "each key once", step);
            }
            Node value = node(next(), keyPath, depth);
            entries.put(key, new MapNode.Entry(position(event), value));
            event = next();
        }
        return new MapNode(entries, position(start), path);
    }

    private String key(Event event, String path) {
        String allowed = "a key that is a text on one line";
        if (!(event instanceof ScalarEvent scalar) || scalar.getAnchor().isPresent()) {
            String step = "write a text, a colon and the value";
            throw refuse(event, path, "this cannot be a key", allowed, step);
        }
        requireNoTag(event, scalar.getTag(), path);
        String key = scalar.getValue();
        if (scalar.isPlain() && key.equals("<<")) {
            throw refuse(event, path, "a merge key stands here", allowed, "write the keys out");
        }
        if (scalar.isPlain() && key.isEmpty()) {
            throw refuse(event, path, "the key is missing", allowed, "write it before the colon");
        }
        requireText(event, key, path);
        return key;
    }

    private ListNode list(Event start, String path, int depth) {
        List<Node> items = new ArrayList<>();
        Event event = next();
        while (event.getEventId() != Event.ID.SequenceEnd) {
            items.add(node(event, Paths.item(path, items.size()), depth));
            event = next();
        }
        return new ListNode(items, position(start), path);
    }

    private ScalarNode scalar(ScalarEvent event, String path) {
        requireNoTag(event, event.getTag(), path);
        String value = event.getValue();
        requireText(event, value, path);
        Position at = position(event);
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

    private void requireText(Event event, String value, String path) {
        if (!ScalarNode.isText(value)) {
            String step = "write both halves or neither";
            String problem = "the text holds half a surrogate pair";
            throw refuse(event, path, problem, "whole characters", step);
        }
    }

    private void requireNoTag(Event event, Optional<String> tag, String path) {
        if (tag.isPresent()) {
            String step = "remove the '!' and the name after it";
            throw refuse(event, path, "a tag stands here", "a value", step);
        }
    }

    private DocumentException refuse(
            Event event, String path, String problem, String allowed, String nextStep) {
        String value = event instanceof ScalarEvent scalar ? scalar.getValue() : "";
        return new DocumentException(position(event), path, value, problem, allowed, nextStep);
    }

    private Position position(Event event) {
        return event.getStartMark()
                .map(mark -> new Position(file, mark.getLine() + 1, mark.getColumn() + 1))
                .orElse(Position.inFile(file));
    }
}
