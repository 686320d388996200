package org.fandown.app.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import org.fandown.app.files.DocumentText;
import org.fandown.check.Verdict;
import org.fandown.document.Json;
import org.fandown.document.ListNode;
import org.fandown.document.MapNode;
import org.fandown.document.Node;
import org.fandown.evidence.Inspection;
import org.fandown.judgement.Edge;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Judgement;
import org.fandown.judgement.Measurement;
import org.fandown.judgement.Status;
import org.fandown.record.JudgementDocument;
import org.fandown.rulebook.EvidenceDemand;
import org.fandown.units.Dimension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold whatever was read, under the rules of every place and for every example. */
class RealRulesPropertyTest {
    private static final String EXACT = "exact";

    /** Rounding in the arithmetic of readings and in the nine digits of a converted one. */
    private static final double ROUNDING = 1e-6;

    /** Books print a pair in two units that differ by less than this, in psi. */
    private static final double PRINTED_PAIR = 1;

    private static final Set<Status> DECIDED = Set.of(Status.MET, Status.NOT_MET);

    @Property(tries = 300)
    void order_of_the_keys_in_a_file_changes_nothing(
            @ForAll("examples") String name, @ForAll Random random) {
        Node document = DocumentText.yaml("inspection.yaml", Examples.INSPECTIONS.get(name));

        assertThat(json(Examples.read(shuffled(document, random))))
                .isEqualTo(json(Examples.read(document)));
    }

    @Property(tries = 1000)
    void met_means_the_whole_interval_inside_and_not_met_the_whole_outside(
            @ForAll("sheets") YardSheet sheet, @ForAll @IntRange(min = 0, max = 30) int tenths) {
        for (Finding finding : findings(sheet.read(steps(tenths))).values()) {
            if (finding.measured().isEmpty() || finding.allowed().isEmpty()) {
                continue;
            }
            Measurement measured = finding.measured().get();
            Optional<Edge> lower = finding.allowed().get().lower();
            Optional<Edge> upper = finding.allowed().get().upper();
            if (finding.status() == Status.MET) {
                lower.ifPresent(
                        e -> assertThat(measured.low()).isGreaterThan(e.value() - ROUNDING));
                upper.ifPresent(e -> assertThat(measured.high()).isLessThan(e.value() + ROUNDING));
            }
            if (finding.status() == Status.NOT_MET) {
                boolean below =
                        lower.map(e -> measured.high() < e.value() + ROUNDING).orElse(false);
                boolean above = upper.map(e -> measured.low() > e.value() - ROUNDING).orElse(false);
                assertThat(below || above).as(key(finding)).isTrue();
            }
            Statistics.label("status").collect(finding.status());
        }
        Statistics.label("status")
                .coverage(
                        c -> {
                            c.check(Status.MET).percentage(share -> share > 5);
                            c.check(Status.NOT_MET).percentage(share -> share > 5);
                            c.check(Status.UNDETERMINED).percentage(share -> share > 1);
                        });
    }

    @Property(tries = 1000)
    void coarser_instruments_never_decide_what_was_open(
            @ForAll("sheets") YardSheet sheet,
            @ForAll @IntRange(min = 0, max = 20) int tenths,
            @ForAll @IntRange(min = 1, max = 30) int more) {
        Map<String, Finding> fine = findings(sheet.read(steps(tenths)));
        Map<String, Finding> coarse = findings(sheet.read(steps(tenths + more)));

        fine.forEach(
                (key, finding) -> {
                    Status after = coarse.get(key).status();
                    if (finding.status() == Status.UNDETERMINED) {
                        assertThat(after).as(key).isNotIn(DECIDED);
                    }
                    if (DECIDED.contains(finding.status()) && DECIDED.contains(after)) {
                        assertThat(after).as(key).isEqualTo(finding.status());
                    }
                });
    }

    @Property(tries = 1000)
    void unit_decides_only_between_the_two_figures_of_a_printed_pair(
            @ForAll("sheets") YardSheet sheet) {
        Map<String, Finding> psi = findings(sheet.read(EXACT));
        Map<String, Finding> kilopascals = findings(sheet.inKilopascals(EXACT));

        psi.forEach(
                (key, finding) -> {
                    Finding other = kilopascals.get(key);
                    boolean differ =
                            DECIDED.contains(finding.status())
                                    && DECIDED.contains(other.status())
                                    && finding.status() != other.status();
                    Statistics.label("differ").collect(differ);
                    if (differ && isPressure(finding)) {
                        assertThat(liesBetweenPrintedFigures(finding, other)).as(key).isTrue();
                    }
                });
        // A pair such as 3 psi and 20 kPa has to be met now and then, else nothing is compared.
        Statistics.label("differ").coverage(c -> c.check(true).count(count -> count > 0));
    }

    static Stream<String> fit() {
        return Examples.INSPECTIONS.keySet().stream()
                .filter(name -> judge(Examples.example(name)).verdict() == Verdict.FIT_TO_MOVE);
    }

    @ParameterizedTest
    @MethodSource("fit")
    void fit_inspection_without_one_reading_that_is_asked_is_not_proven(String name) {
        Node document = DocumentText.yaml("inspection.yaml", Examples.INSPECTIONS.get(name));
        Judgement whole = judge(Examples.read(document));
        MapNode readings = (MapNode) ((MapNode) document).get("readings").orElseThrow();
        int asked = 0;
        for (String key : readings.keys()) {
            if (isAsked(whole, key)) {
                asked++;
                Judgement less = judge(Examples.read(without(document, "readings", key)));
                assertThat(less.verdict()).as(key).isEqualTo(Verdict.NOT_PROVEN);
            }
        }
        assertThat(asked).as("readings that are asked").isPositive();
    }

    private static boolean isAsked(Judgement judgement, String check) {
        return judgement.rules().rulings().stream()
                .anyMatch(
                        r ->
                                r.rule().check().id().equals(check)
                                        && r.decides()
                                        && r.rule().weight().evidence() == EvidenceDemand.ASKED);
    }

    @Provide
    Arbitrary<YardSheet> sheets() {
        return Arbitraries.randomValue(YardSheet::random);
    }

    @Provide
    Arbitrary<String> examples() {
        return Arbitraries.of(Examples.INSPECTIONS.keySet());
    }

    private static boolean isPressure(Finding finding) {
        return finding.measured()
                .map(m -> m.unit().dimension() == Dimension.GAUGE_PRESSURE)
                .orElse(false);
    }

    private static boolean liesBetweenPrintedFigures(Finding psi, Finding kilopascals) {
        double value = psi.measured().orElseThrow().value();
        assertThat(kilopascals.measured().orElseThrow().value() / YardSheet.KPA_PER_PSI)
                .isCloseTo(value, within(ROUNDING));
        return isBetween(
                        value,
                        psi.allowed().orElseThrow().lower(),
                        kilopascals.allowed().orElseThrow().lower())
                || isBetween(
                        value,
                        psi.allowed().orElseThrow().upper(),
                        kilopascals.allowed().orElseThrow().upper());
    }

    private static boolean isBetween(double psi, Optional<Edge> own, Optional<Edge> other) {
        if (own.isEmpty() || other.isEmpty()) {
            return false;
        }
        double first = own.get().value();
        double second = other.get().value() / YardSheet.KPA_PER_PSI;
        return Math.abs(first - second) < PRINTED_PAIR
                && psi >= Math.min(first, second) - ROUNDING
                && psi <= Math.max(first, second) + ROUNDING;
    }

    private static String steps(int tenths) {
        return tenths == 0
                ? EXACT
                : "{ gauge: %1$s.%2$s psi, clock: %1$s.%2$s s, rule: 0.0%1$s%2$s in }"
                        .formatted(tenths / 10, tenths % 10);
    }

    private static Judgement judge(Inspection inspection) {
        return Examples.judge(inspection).orElseThrow();
    }

    private static Map<String, Finding> findings(Inspection inspection) {
        Map<String, Finding> findings = new LinkedHashMap<>();
        judge(inspection).findings().forEach(f -> findings.put(key(f), f));
        return findings;
    }

    private static String key(Finding finding) {
        return finding.ruling().rule().id() + finding.wheel().map(w -> " " + w).orElse("");
    }

    private static String json(Inspection inspection) {
        return Json.write(JudgementDocument.of(judge(inspection), Optional.empty()));
    }

    /** The same document with the keys of every map in another order. */
    private static Node shuffled(Node node, Random random) {
        if (node instanceof ListNode list) {
            return new ListNode(
                    list.items().stream().map(item -> shuffled(item, random)).toList(),
                    list.at(),
                    list.path());
        }
        if (!(node instanceof MapNode map)) {
            return node;
        }
        List<String> keys = new ArrayList<>(map.keys());
        Collections.shuffle(keys, random);
        Map<String, MapNode.Entry> entries = new LinkedHashMap<>();
        for (String key : keys) {
            Node value = shuffled(map.get(key).orElseThrow(), random);
            entries.put(key, new MapNode.Entry(map.keyAt(key), value));
        }
        return new MapNode(entries, map.at(), map.path());
    }

    private static Node without(Node document, String outer, String inner) {
        Map<String, MapNode.Entry> entries = new LinkedHashMap<>(((MapNode) document).entries());
        MapNode map = (MapNode) entries.get(outer).value();
        Map<String, MapNode.Entry> fewer = new LinkedHashMap<>(map.entries());
        fewer.remove(inner);
        entries.put(
                outer,
                new MapNode.Entry(
                        entries.get(outer).keyAt(), new MapNode(fewer, map.at(), map.path())));
        return new MapNode(entries, document.at(), document.path());
    }
}
