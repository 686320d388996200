package org.fandown.app.cli;

import java.io.PrintWriter;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.fandown.app.files.DocumentFiles;
import org.fandown.app.files.RulePacks;
import org.fandown.app.paper.Judged;
import org.fandown.app.paper.ReportPdf;
import org.fandown.check.PlaceCode;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.InspectionReader;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
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
            ReportPdf.write(judged.content(), report);
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
