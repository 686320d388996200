package org.fandown.app.cli;

import java.io.PrintWriter;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.concurrent.Callable;
import org.fandown.app.files.DocumentFiles;
import org.fandown.app.files.RulePacks;
import org.fandown.app.files.WholeFile;
import org.fandown.app.keys.SiteKey;
import org.fandown.app.paper.Judged;
import org.fandown.app.paper.RecordReport;
import org.fandown.app.paper.ReportContent;
import org.fandown.app.paper.ReportPdf;
import org.fandown.check.PlaceCode;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.document.Tree;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.InspectionReader;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb {@code judge}: findings and verdict of one written-down inspection. */
@Command(
        name = "judge",
        mixinStandardHelpOptions = true,
        description =
                "Judges one written-down inspection by the rules of its place, vehicle and date.",
        footer = {
            "",
            "Exit codes: 0 fit to move, 1 not fit to move, 3 not proven, 2 bad usage or bad input.",
            "Examples of inspections lie in examples/inspections."
        })
final class JudgeCommand implements Callable<Integer> {
    @Spec private CommandSpec spec;
    @Mixin private PackOptions packOptions;

    @Parameters(paramLabel = "INSPECTION", description = "the inspection file (YAML or JSON)")
    private Path file;

    @Option(names = "--json", description = "write the judgement as JSON")
    private boolean json;

    @Option(
            names = "--report",
            paramLabel = "OUT.pdf",
            description = "write the report to sign as PDF too")
    private @Nullable Path report;

    @Option(
            names = "--sign",
            description = "sign the report by the key of the site, to be checked by 'verify'")
    private boolean sign;

    @Mixin private DataOption data;

    @Mixin private KeyOptions keyOptions;

    @Option(names = "--assumptions", description = "list what the braking estimate rests on")
    private boolean assumptions;

    private JudgeCommand() {}

    @Override
    public Integer call() {
        Node written = DocumentFiles.read(file);
        Inspection inspection = new InspectionReader(this::vehicle).read(written);
        RulePacks packs = packOptions.packs();
        Judged judged =
                Judged.of(inspection, packs)
                        .orElseThrow(() -> noPack(written, inspection.place(), packs));
        if (report != null) {
            write(written, packs, report);
        } else if (sign) {
            throw new ParameterException(
                    spec.commandLine(), "--sign signs a report. Next: add --report OUT.pdf.");
        }
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(Json.write(judged.document()));
            out.flush();
        } else {
            new JudgementText(judged.judgement(), judged.summary(), assumptions, new Screen(out))
                    .print();
        }
        return ExitCode.of(judged.judgement().verdict());
    }

    /** Sets the report from what it holds of the inspection, so that others can set it again. */
    private void write(Node written, RulePacks packs, Path out) {
        Node whole =
                Tree.map()
                        .put(
                                "inspection",
                                WholeInspection.of(Fields.of(written).map(), this::vehicle))
                        .build();
        ReportContent content = RecordReport.of(whole, packs).orElseThrow();
        if (sign) {
            SiteKey key = keyOptions.key(data.folder(), spec.commandLine()).get();
            OffsetDateTime now = OffsetDateTime.now(ZoneOffset.UTC);
            WholeFile.write("report", out, ReportPdf.signed(content, key, now));
        } else {
            ReportPdf.write(content, out);
        }
    }

    private static DocumentException noPack(Node written, PlaceCode place, RulePacks packs) {
        return Fields.of(written)
                .refuse(
                        "place",
                        "there is no rule pack for this place",
                        PackOptions.known(packs),
                        PackOptions.nextStep(packs, place));
    }

    private Node vehicle(String name) {
        try {
            return DocumentFiles.read(file.resolveSibling(name));
        } catch (InvalidPathException e) {
            throw new IllegalArgumentException("it is not a path", e);
        }
    }
}
