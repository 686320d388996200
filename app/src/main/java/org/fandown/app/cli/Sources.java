package org.fandown.app.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import org.fandown.rulebook.Rule;
import org.fandown.rulebook.Ruling;

/** Numbers the sources that a text refers to. */
final class Sources {
    private final Map<String, Integer> numbers = new LinkedHashMap<>();

    String mark(Ruling ruling) {
        Rule rule = ruling.rule();
        String text =
                ruling.value().source()
                        + " ("
                        + rule.provenance().title()
                        + "; last checked "
                        + rule.verifiedOn()
                        + ")";
        return "[" + numbers.computeIfAbsent(text, t -> numbers.size() + 1) + "]";
    }

    void print(Screen screen) {
        if (numbers.isEmpty()) {
            return;
        }
        screen.heading("Sources");
        numbers.forEach((text, number) -> screen.wrapped("  ", "[" + number + "] " + text));
    }
}
