package org.fandown.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.cert.X509Certificate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.fandown.app.keys.Certificates;
import org.fandown.app.keys.KeyException;
import org.fandown.app.keys.SiteKeyFile;
import org.fandown.app.paper.CheckLine;
import org.fandown.app.paper.CheckLine.Outcome;
import org.fandown.app.paper.CheckedReport;
import org.fandown.app.paper.ReportCheck;
import org.fandown.app.paper.UnreadableReportException;
import org.fandown.app.store.Store;
import org.fandown.document.Json;
import org.fandown.document.Names;
import org.fandown.document.Tree;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb {@code verify}: whether a printed report can be relied on. */
@Command(
        name = "verify",
        mixinStandardHelpOptions = true,
        description = {
            "Checks a report, or a package of records handed over: who signed it and that nothing was changed since, that its pages say"
                    + " what the record in it says, and its place in the chains of the site.",
            "The moment of the signature is what the site says of itself."
        },
        footer = {
            "",
            "Exit codes: 0 all is well, 1 something is wrong, 3 not proven (such as a signer nobody"
                    + " knows), 2 bad usage or no report."
        })
final class VerifyCommand implements Callable<Integer> {
    /** The largest report: photos and record of 32 MiB each, bytes. */
    private static final long MOST_BYTES = 96L * 1024 * 1024;

    @Spec private CommandSpec spec;
    @Mixin private PackOptions packOptions;
    @Mixin private KeyOptions keyOptions;
    @Mixin private StoreOptions storeOptions;

    @Parameters(paramLabel = "FILE", description = "the report, PDF, or a package handed over, ZIP")
    private Path file;

    @Option(
            names = "--certificate",
            paramLabel = "FILE",
            description = "the certificate of a site one knows, PEM or DER; may be given again")
    private List<Path> certificates = new ArrayList<>();

    @Option(names = "--json", description = "write what was found as JSON")
    private boolean json;

    private VerifyCommand() {}

    @Override
    public Integer call() {
        CheckedReport report;
        try {
            byte[] bytes = read();
            report =
                    PackageCheck.isPackage(bytes)
                            ? PackageCheck.of(bytes, packOptions.packs(), known())
                            : ReportCheck.of(bytes, packOptions.packs(), known());
        } catch (UnreadableReportException e) {
            throw bad(e.getMessage(), e);
        } catch (IOException e) {
            throw bad("The package " + file + " cannot be read: " + e.getMessage(), e);
        }
        CheckedReport whole = report.and(chain(report));
        if (json) {
            spec.commandLine().getOut().println(Json.write(document(whole)));
            spec.commandLine().getOut().flush();
        } else {
            print(whole);
        }
        return code(whole);
    }

    private byte[] read() {
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw bad("The file " + file + " is larger than any report (96 MiB).", null);
            }
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw bad("The file " + file + " cannot be read. Next: check its name.", e);
        }
    }

    /** The certificates named, that of the key named, and that of the key among the records. */
    private List<X509Certificate> known() {
        List<X509Certificate> known = new ArrayList<>();
        try {
            certificates.forEach(each -> known.add(Certificates.read(each)));
            keyOptions.own(spec.commandLine()).ifPresent(key -> known.add(key.certificate()));
            Path own = storeOptions.folder().resolve(SiteKeyFile.CERTIFICATE);
            if (Files.exists(own)) {
                known.add(Certificates.read(own));
            }
        } catch (KeyException e) {
            throw bad(e.getMessage(), e);
        }
        return known;
    }

    /** Opens the store only where it is named and there is something to look for. */
    private List<CheckLine> chain(CheckedReport report) {
        ChainCheck check = new ChainCheck(report);
        if (check.id().isEmpty() || !storeOptions.isNamed()) {
            return check.lines(Optional.empty());
        }
        try (Store store = storeOptions.open(spec.commandLine())) {
            return check.lines(Optional.of(store));
        }
    }

    private static Tree.MapBuilder line(CheckLine line) {
        return Tree.map()
                .put("check", line.check())
                .put("outcome", Names.kebab(line.outcome()))
                .put("says", line.says());
    }

    private static org.fandown.document.Node document(CheckedReport report) {
        Tree.ListBuilder lines = Tree.list();
        report.lines().forEach(each -> lines.add(line(each)));
        return Tree.map().put("format", "fandown-verification/1").put("checks", lines).build();
    }

    private void print(CheckedReport report) {
        Screen screen = new Screen(spec.commandLine().getOut());
        for (CheckLine line : report.lines()) {
            screen.hanging(
                    String.format(
                            java.util.Locale.ROOT,
                            "%-12s%-10s",
                            word(line.outcome()),
                            line.check()),
                    line.says() + ".");
        }
        screen.done();
    }

    private static String word(Outcome outcome) {
        return switch (outcome) {
            case OK -> "ok";
            case NOT_OK -> "NOT OK";
            case NOT_CHECKED -> "not checked";
        };
    }

    private static int code(CheckedReport report) {
        List<Outcome> all = report.lines().stream().map(CheckLine::outcome).toList();
        if (all.contains(Outcome.NOT_OK)) {
            return ExitCode.WRONG;
        }
        return all.contains(Outcome.NOT_CHECKED) ? ExitCode.NOT_PROVEN : ExitCode.DONE;
    }

    private ParameterException bad(@Nullable String message, @Nullable Throwable cause) {
        return new ParameterException(spec.commandLine(), message, cause);
    }
}
