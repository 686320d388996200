package org.fandown.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fandown.app.files.RulePacks;
import org.fandown.check.PlaceCode;
import org.fandown.rulebook.Provenance;
import org.fandown.rulebook.Rule;
import org.junit.jupiter.api.Test;

/**
 * Keeps docs/validation.md as the tests and packs have it. To write it anew: {@code mvn -pl app -am
 * test -Dtest=ValidationDocTest -Dsurefire.failIfNoSpecifiedTests=false -Dfandown.write=true}.
 */
class ValidationDocTest {
    private static final Path DOC = Path.of("../docs/validation.md");
    private static final List<Path> TESTS =
            List.of(
                    Path.of("../core/src/test/java/org/fandown/reference"),
                    Path.of("src/test/java/org/fandown/reference"));
    private static final Path TRACE_TABLE =
            Path.of("../core/src/test/resources/org/fandown/property/trace/table.md");
    private static final String TRACES =
            "Whole tests in the cab of simulated vehicles, sound or with up to two faults, recorded"
                    + " by instruments of several steps, rates and noises. Right is what truly"
                    + " happened in the simulation; a loss is that of the worse circuit over its"
                    + " window ([model.md](model.md#losses-from-a-trace)). Written by"
                    + " `TraceRecognitionPropertyTest`, whose comment has the command; a smaller"
                    + " count is part of all tests.";
    private static final String OPENING = "@Source(";
    private static final Pattern METHOD = Pattern.compile("\\bvoid\\s+(\\w+)\\(");
    private static final String LITERAL = "(?:\"(?:[^\"\\\\]|\\\\.)*\"[\\s+]*)+";
    private static final Pattern KIND = Pattern.compile("kind\\s*=\\s*[\\w.]*?(\\w+)\\s*[,)]");

    @Test
    void validation_page_lists_every_reference_test_and_every_rule_without_a_text()
            throws IOException {
        String page = page();
        if (Boolean.getBoolean("fandown.write")) {
            Files.writeString(DOC, page);
        }
        assertThat(Files.readString(DOC))
                .as(
                        "docs/validation.md is old; see the comment of this test for how to write it anew")
                .isEqualTo(page);
    }

    private static String page() throws IOException {
        StringBuilder page = new StringBuilder();
        page.append(
                "# Validation\n\nWritten by `ValidationDocTest` from the tests and the rule packs.\n\n");
        page.append("## Rules that nobody has compared with a text\n\n");
        page.append(
                "This list is the honest headline. Their limits are remembered, or common practice.\n\n");
        page.append(
                "| place | rules | of them without a text | which |\n| --- | --- | --- | --- |\n");
        RulePacks packs = RulePacks.builtIn();
        for (PlaceCode place : packs.places()) {
            List<Rule> rules = packs.pack(place).rules();
            List<String> bare =
                    rules.stream().filter(ValidationDocTest::isBare).map(Rule::id).toList();
            page.append(
                    "| %s | %d | %d | %s |\n"
                            .formatted(
                                    place,
                                    rules.size(),
                                    bare.size(),
                                    bare.isEmpty() ? "none" : String.join(", ", bare)));
        }
        page.append("\n## Checks against the outside\n\n");
        page.append("| test | kind | work | edition | where |\n| --- | --- | --- | --- | --- |\n");
        for (String row : rows()) {
            page.append(row).append('\n');
        }
        page.append("\n## Tests recognised in traces\n\n");
        page.append(TRACES).append("\n\n").append(Files.readString(TRACE_TABLE));
        return page.toString();
    }

    private static boolean isBare(Rule rule) {
        return rule.provenance() == Provenance.FROM_MEMORY
                || rule.provenance() == Provenance.COMMON_PRACTICE;
    }

    private static List<String> rows() throws IOException {
        List<String> rows = new ArrayList<>();
        for (Path folder : TESTS) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file :
                        files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
                    rows.addAll(rows(file));
                }
            }
        }
        return rows;
    }

    private static List<String> rows(Path file) throws IOException {
        String text = Files.readString(file);
        List<String> rows = new ArrayList<>();
        Matcher method = METHOD.matcher(text);
        for (int at = text.indexOf(OPENING); at >= 0; at = text.indexOf(OPENING, at + 1)) {
            String source = text.substring(at, end(text, at + OPENING.length()));
            assertThat(method.find(at)).as("a test after each source in " + file).isTrue();
            Matcher kind = KIND.matcher(source);
            rows.add(
                    "| %s: %s | %s | %s | %s | %s |"
                            .formatted(
                                    file.getFileName()
                                            .toString()
                                            .replace("ReferenceTest.java", "")
                                            .replace(".java", ""),
                                    method.group(1).replace('_', ' '),
                                    kind.find()
                                            ? kind.group(1)
                                                    .toLowerCase(Locale.ROOT)
                                                    .replace('_', ' ')
                                            : "",
                                    part(source, "work", text),
                                    part(source, "edition", text),
                                    part(source, "where", text)));
        }
        return rows;
    }

    /** The end of the annotation whose first bracket has been opened, brackets in texts aside. */
    private static int end(String text, int from) {
        boolean quoted = false;
        int depth = 1;
        int at = from;
        while (depth > 0) {
            char c = text.charAt(at);
            quoted ^= c == '"' && text.charAt(at - 1) != '\\';
            depth += quoted ? 0 : c == '(' ? 1 : c == ')' ? -1 : 0;
            at++;
        }
        return at;
    }

    /** The text of one part, looked up where it is a constant of the file. */
    private static String part(String source, String name, String text) {
        Matcher part =
                Pattern.compile("\\b" + name + "\\s*=\\s*(\\w+|" + LITERAL + ")").matcher(source);
        if (!part.find()) {
            return "";
        }
        String value = part.group(1);
        if (!value.startsWith("\"")) {
            Matcher constant =
                    Pattern.compile("\\b" + value + "\\s*=\\s*(" + LITERAL + ")").matcher(text);
            assertThat(constant.find()).as("constant " + value).isTrue();
            value = constant.group(1);
        }
        return value.replaceAll("\"\\s*\\+\\s*\"", "")
                .strip()
                .replace("\"", "")
                .replace("|", "/")
                .strip();
    }
}
