package org.fandown.app.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import org.fandown.app.files.DocumentText;
import org.fandown.document.DocumentException;
import org.fandown.document.Json;
import org.fandown.document.Names;
import org.fandown.document.Node;
import org.fandown.evidence.Inspection;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Judgement;
import org.fandown.practice.PracticeTruck;
import org.fandown.practice.Scenario;
import org.fandown.practice.ScenarioDocument;
import org.fandown.practice.Script;
import org.fandown.practice.ScriptDocument;
import org.fandown.record.JudgementDocument;
import org.fandown.record.MeasuredStrokes;
import org.fandown.rulebook.Pack;
import org.fandown.rulebook.PackReader;
import org.fandown.vehicle.VehicleReader;

/**
 * Whatever a file holds, a reader reads it or refuses it in the documented way; and whatever is
 * read can be judged.
 */
class ReadersFuzzPropertyTest {
    private static final Set<String> STATUSES =
            Set.of("met", "not-met", "undetermined", "spoiled", "not-checked", "not-applicable");

    /** Small packs, since the large ones hold nothing that these do not. */
    private static final List<String> PACKS = List.of("CA-YT", "AU-WA", "US-GA", "CA-MB", "ZA");

    private static final List<Function<Node, Object>> READERS =
            List.of(
                    Examples::read,
                    VehicleReader::read,
                    PackReader::read,
                    Examples::scenario,
                    Examples::script);

    @Property(tries = 10_000, seed = "20261125", shrinking = ShrinkingMode.OFF)
    void any_bytes_are_read_or_refused(@ForAll byte[] bytes, @ForAll boolean json) {
        String file = json ? "any.json" : "any.yaml";
        for (Function<Node, Object> reader : READERS) {
            readOrRefused(() -> reader.apply(DocumentText.of(file, bytes)));
        }
    }

    @Property(tries = 10_000, seed = "20261125", shrinking = ShrinkingMode.OFF)
    void any_text_of_the_words_of_our_files_is_read_or_refused(@ForAll("words") String text) {
        for (Function<Node, Object> reader : READERS) {
            readOrRefused(() -> reader.apply(DocumentText.yaml("any.yaml", text)));
        }
    }

    @Property(tries = 10_000, seed = "20261125", shrinking = ShrinkingMode.OFF)
    void a_damaged_inspection_is_refused_or_judged(@ForAll("inspections") String text) {
        Optional<Inspection> read = readOrRefused(() -> Examples.read(text));

        read.flatMap(Examples::judge).ifPresent(j -> assertWhole(j));
        collect(read);
    }

    @Property(tries = 10_000, seed = "20261125", shrinking = ShrinkingMode.OFF)
    void an_inspection_of_a_damaged_vehicle_is_refused_or_judged(
            @ForAll("vehicles") String text, @ForAll("places") String place) {
        String inspection =
                "place: %s%nmoment: 2026-11-24T06:00:00Z%nvehicle:%n%s"
                        .formatted(place, text.indent(2));
        Optional<Inspection> read = readOrRefused(() -> Examples.read(inspection));

        read.flatMap(Examples::judge).ifPresent(j -> assertWhole(j));
        collect(read);
    }

    @Property(tries = 10_000, seed = "20261125", shrinking = ShrinkingMode.OFF)
    void a_damaged_rule_pack_is_read_or_refused(@ForAll("packs") String text) {
        Optional<Pack> read =
                readOrRefused(() -> PackReader.read(DocumentText.yaml("any.yaml", text)));

        collect(read);
    }

    @Property(tries = 2000, seed = "20261125", shrinking = ShrinkingMode.OFF)
    void a_damaged_scenario_is_refused_or_makes_a_truck(@ForAll("scenarios") String text) {
        Optional<Scenario> read =
                readOrRefused(() -> Examples.scenario(DocumentText.yaml("any.yaml", text)));

        read.ifPresent(
                scenario -> {
                    PracticeTruck.of(scenario).advance(0.1);
                    String written = Json.write(ScenarioDocument.of(scenario));
                    assertThat(Examples.scenario(Json.read("again.json", written)))
                            .isEqualTo(scenario);
                });
        collect(read);
    }

    @Property(tries = 10_000, seed = "20261125", shrinking = ShrinkingMode.OFF)
    void a_damaged_script_is_refused_or_read_and_written(@ForAll("scripts") String text) {
        Optional<Script> read =
                readOrRefused(() -> Examples.script(DocumentText.yaml("any.yaml", text)));

        read.ifPresent(
                script -> {
                    String written = Json.write(ScriptDocument.of(script));
                    assertThat(Examples.script(Json.read("again.json", written))).isEqualTo(script);
                });
        collect(read);
    }

    /** A share of the tries has to get through, else the property looks at nothing but refusals. */
    private static void collect(Optional<?> read) {
        Statistics.label("read").collect(read.isPresent());
        Statistics.label("read").coverage(c -> c.check(true).percentage(share -> share > 10));
    }

    /** Every word of the judgement is put together, since words are made only when asked for. */
    private static void assertWhole(Judgement judgement) {
        String json =
                Json.writeCompact(
                        JudgementDocument.of(
                                judgement, MeasuredStrokes.estimate(judgement.inspection())));
        assertThat(json).startsWith("{\"format\":");
        for (Finding finding : judgement.findings()) {
            assertThat(STATUSES).contains(Names.kebab(finding.status()));
        }
    }

    private interface Reading<T> {
        T read();
    }

    private static <T> Optional<T> readOrRefused(Reading<T> reading) {
        try {
            return Optional.of(reading.read());
        } catch (DocumentException e) {
            assertThat(e.getMessage()).doesNotContain("\n");
            assertThat(e.problem()).isNotBlank();
            assertThat(e.nextStep()).isNotBlank();
            return Optional.empty();
        }
    }

    @Provide
    Arbitrary<String> inspections() {
        return damaged(List.copyOf(Examples.INSPECTIONS.values()));
    }

    @Provide
    Arbitrary<String> scenarios() {
        return damaged(List.copyOf(Examples.SCENARIOS.values()));
    }

    @Provide
    Arbitrary<String> scripts() {
        return damaged(List.copyOf(Examples.SCRIPTS.values()));
    }

    @Provide
    Arbitrary<String> vehicles() {
        return damaged(List.copyOf(Examples.VEHICLES.values()));
    }

    @Provide
    Arbitrary<String> packs() {
        return damaged(PACKS.stream().map(ReadersFuzzPropertyTest::pack).toList());
    }

    @Provide
    Arbitrary<String> places() {
        return Arbitraries.of(Examples.PLACES).map(Object::toString);
    }

    private static Arbitrary<String> damaged(List<String> texts) {
        return Arbitraries.randomValue(
                random -> new Damage(random).of(texts.get(random.nextInt(texts.size()))));
    }

    /** Lines with the keys and values that our files know, at any indent. */
    @Provide
    Arbitrary<String> words() {
        String all =
                String.join(" ", Examples.INSPECTIONS.values())
                        + String.join(" ", Examples.VEHICLES.values())
                        + String.join(" ", Examples.SCENARIOS.values())
                        + String.join(" ", Examples.SCRIPTS.values())
                        + pack("CA-YT");
        List<String> words = List.of(all.split("\\s+"));
        return Arbitraries.randomValue(random -> lines(words, random));
    }

    private static String lines(List<String> words, Random random) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(12); i >= 0; i--) {
            text.append("  ".repeat(random.nextInt(3)));
            for (int j = random.nextInt(4); j >= 0; j--) {
                text.append(words.get(random.nextInt(words.size())));
                text.append(List.of(" ", ": ", ", ", "").get(random.nextInt(4)));
            }
            text.append('\n');
        }
        return text.toString();
    }

    private static String pack(String code) {
        String name = "/org/fandown/rulebook/" + code + ".yaml";
        try (InputStream in = PackReader.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
