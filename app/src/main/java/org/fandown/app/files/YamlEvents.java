package org.fandown.app.files;

import java.util.Iterator;
import java.util.Optional;
import org.fandown.document.DocumentException;
import org.fandown.document.Position;
import org.fandown.document.ScalarNode;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** The events of one YAML text in order, with refusals at the place of an event. */
final class YamlEvents {
    private final String file;
    private final String text;
    private final Iterator<Event> events;
    private Position last;

    /** Begins to read, unless the text holds a character that no YAML may hold. */
    YamlEvents(String file, String text) {
        YamlProblems.requirePrintable(file, text);
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

    /** Returns the next event; refuses the text where it is not YAML. */
    Event next() {
        try {
            Event event = events.next();
            last = position(event);
            return event;
        } catch (MarkedYamlEngineException e) {
            throw YamlProblems.translate(file, text, e);
        } catch (YamlEngineException | IllegalArgumentException e) {
            // The parser lets the second kind slip for an escape beyond the last code point.
            throw YamlProblems.unreadable(last);
        }
    }

    Position position(Event event) {
        return event.getStartMark()
                .map(mark -> new Position(file, mark.getLine() + 1, mark.getColumn() + 1))
                .orElse(Position.inFile(file));
    }

    DocumentException refuse(
            Event event, String path, String problem, String allowed, String nextStep) {
        String value = event instanceof ScalarEvent scalar ? scalar.getValue() : "";
        return new DocumentException(position(event), path, value, problem, allowed, nextStep);
    }

    void requireText(Event event, String value, String path) {
        if (!ScalarNode.isText(value)) {
            String step = "write both halves or neither";
            String problem = "the text holds half a surrogate pair";
            throw refuse(event, path, problem, "whole characters", step);
        }
    }

    void requireNoTag(Event event, Optional<String> tag, String path) {
        if (tag.isPresent()) {
            String step = "remove the '!' and the name after it";
            throw refuse(event, path, "a tag stands here", "a value", step);
        }
    }
}
