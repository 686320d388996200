package org.fandown.app.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.fandown.app.files.DocumentFiles;
import org.fandown.app.files.DocumentText;
import org.fandown.app.files.RulePacks;
import org.fandown.braking.BrakingEstimate;
import org.fandown.check.PlaceCode;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.InspectionReader;
import org.fandown.evidence.Report;
import org.fandown.evidence.VehicleSource;
import org.fandown.judgement.Judge;
import org.fandown.judgement.Judgement;
import org.fandown.record.BrakingSummary;
import org.fandown.record.JudgementDocument;
import org.fandown.record.MeasuredStrokes;
import org.fandown.rulebook.RulesInForce;

/** Reports of inspections of our own invention. */
public final class Samples {
    static final String ONTARIO_TRACTOR_TRAILER = "on-tractor-trailer.yaml";
    static final String QUEBEC_TRUCK = "qc-truck.yaml";
    static final String US_DOUBLES = "us-doubles.yaml";

    private static final Path EXAMPLES = Path.of("..", "examples", "inspections");
    private static final RulePacks PACKS = RulePacks.builtIn();
    private static final PlaceCode US = new PlaceCode("US");

    private Samples() {}

    /** The text of a sample. */
    static String text(String name) {
        try (InputStream in = Samples.class.getResourceAsStream(name)) {
            return new String(
                    Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is printed for a sample. */
    static ReportContent sample(String name) {
        return yaml(text(name));
    }

    /** What is printed for an inspection with its vehicle in it. */
    public static ReportContent yaml(String yaml) {
        return content(read(DocumentText.yaml("sample.yaml", yaml), VehicleSource.NONE));
    }

    /** The same inspection with other entries in its report. */
    static ReportContent withReport(String name, UnaryOperator<Map<Report.Entry, String>> change) {
        Inspection one = read(DocumentText.yaml(name, text(name)), VehicleSource.NONE);
        Map<Report.Entry, String> entries = new EnumMap<>(Report.Entry.class);
        entries.putAll(one.report().entries());
        return content(
                new Inspection(
                        one.place(),
                        one.moment(),
                        one.vehicle(),
                        new Report(change.apply(entries)),
                        one.instruments(),
                        one.conditionsAsPrinted(),
                        one.observations(),
                        one.notes(),
                        one.simulated()));
    }

    /** What is printed for one of the examples. */
    public static ReportContent example(String name) {
        Path file = EXAMPLES.resolve(name);
        return content(
                read(
                        DocumentFiles.read(file),
                        vehicle -> DocumentFiles.read(file.resolveSibling(vehicle))));
    }

    /** The names of the examples. */
    static List<String> examples() {
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".yaml"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Inspection read(Node document, VehicleSource vehicles) {
        return new InspectionReader(vehicles).read(document);
    }

    private static ReportContent content(Inspection inspection) {
        Judgement judgement =
                Judge.judge(PACKS.rulebookFor(inspection.place()).orElseThrow(), inspection);
        Optional<BrakingEstimate> braking = MeasuredStrokes.estimate(inspection);
        RulesInForce yardstick =
                PACKS.rulebookFor(US)
                        .orElseThrow()
                        .inForce(US, inspection.vehicle(), judgement.rules().day());
        return new ReportContent(
                judgement,
                braking.map(b -> BrakingSummary.of(b, Optional.of(yardstick))),
                Json.write(JudgementDocument.of(judgement, braking)));
    }
}
