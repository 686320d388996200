package org.fandown.reference.rulebook;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fandown.app.files.DocumentText;
import org.fandown.document.Node;

/**
 * A test vehicle: a vehicle file with places that a row may fill in, written {@code
 * <<name=default>>}.
 *
 * @param name its name
 * @param template its file, with the places still open
 */
record TestVehicle(String name, String template) {
    private static final Pattern OPEN = Pattern.compile("<<([a-z0-9-]+)=([^>]*)>>");

    static TestVehicle named(String name) {
        return new TestVehicle(name, TripleTable.resource("vehicles/" + name + ".txt"));
    }

    /** The names of what a row may fill in. */
    Set<String> open() {
        Set<String> names = new TreeSet<>();
        Matcher matcher = OPEN.matcher(template);
        while (matcher.find()) {
            names.add(matcher.group(1));
        }
        return names;
    }

    /** The vehicle file with the open places filled in, from the map or with their defaults. */
    Node filledIn(Map<String, String> with) {
        Matcher matcher = OPEN.matcher(template);
        String text =
                matcher.replaceAll(
                        m -> Matcher.quoteReplacement(with.getOrDefault(m.group(1), m.group(2))));
        return DocumentText.yaml(name + ".yaml", text);
    }
}
