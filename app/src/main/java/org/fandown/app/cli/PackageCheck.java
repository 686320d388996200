package org.fandown.app.cli;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.cert.X509Certificate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.fandown.app.files.RulePacks;
import org.fandown.app.files.Sha256;
import org.fandown.app.paper.CheckLine;
import org.fandown.app.paper.CheckedReport;
import org.fandown.app.paper.ReportCheck;
import org.fandown.app.paper.UnreadableReportException;
import org.fandown.document.DocumentException;
import org.fandown.document.Fields;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.record.CanonicalJson;
import org.fandown.record.Seal;

/**
 * Checks a package that was handed over, without trust in the site: each record and statement
 * against its seal, the seals against each other, each report in itself and against its record.
 */
final class PackageCheck {
    private static final int MOST_FILES = 400;

    /** All files together, bytes. */
    private static final long MOST_BYTES = 1024L * 1024 * 1024;

    private static final String SEALS = "seals.json";

    private final Map<String, byte[]> files;
    private final RulePacks packs;
    private final List<X509Certificate> known;
    private final List<CheckLine> lines = new ArrayList<>();

    private PackageCheck(Map<String, byte[]> files, RulePacks packs, List<X509Certificate> known) {
        this.files = files;
        this.packs = packs;
        this.known = known;
    }

    /** Whether these bytes are those of a package rather than of a report. */
    static boolean isPackage(byte[] file) {
        return file.length > 1 && file[0] == 'P' && file[1] == 'K';
    }

    /**
     * Checks a package.
     *
     * @param file its bytes
     * @param packs the rules to judge its records by
     * @param known certificates of sites that are known
     * @throws IOException if it is no package, or larger than any
     */
    static CheckedReport of(byte[] file, RulePacks packs, List<X509Certificate> known)
            throws IOException {
        PackageCheck check = new PackageCheck(unpacked(file), packs, known);
        check.check();
        return new CheckedReport(check.lines, Optional.empty(), Optional.empty());
    }

    private static Map<String, byte[]> unpacked(byte[] file) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        long room = MOST_BYTES;
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                byte[] bytes = in.readNBytes((int) Math.min(Integer.MAX_VALUE - 8, room + 1));
                room -= bytes.length;
                if (room < 0 || files.size() == MOST_FILES) {
                    throw new IOException("it is larger than any package");
                }
                if (files.put(entry.getName(), bytes) != null) {
                    throw new IOException("it has two files named " + entry.getName());
                }
            }
        }
        return files;
    }

    private void check() {
        Map<Long, Seal> seals = seals();
        if (seals.isEmpty()) {
            return;
        }
        int records = 0;
        for (String name : files.keySet()) {
            if (name.startsWith("records/")) {
                records++;
                record(name.substring("records/".length()), seals);
            } else if (!isExpected(name)) {
                lines.add(CheckLine.notOk("package", name + " is of no record in the package"));
            }
        }
        if (records == 0) {
            lines.add(CheckLine.notChecked("package", "no record is in it"));
        }
    }

    private boolean isExpected(String name) {
        String record =
                name.replaceFirst("^(statements|reports)/", "records/").replace(".pdf", ".json");
        return name.equals(SEALS)
                || name.equals("READ-ME.txt")
                || (!record.equals(name) && files.containsKey(record));
    }

    /** The seals by number; each must follow from the one before. */
    private Map<Long, Seal> seals() {
        Map<Long, Seal> seals = new TreeMap<>();
        try {
            Fields list = Fields.of(Json.read(SEALS, text(SEALS)));
            String before = "";
            long number = 0;
            for (Node node : list.list("seals")) {
                Seal seal = Seal.read(node);
                if (!seal.vehicleBefore().equals(before) || seal.number() <= number) {
                    lines.add(
                            CheckLine.notOk(
                                    "chain",
                                    "seal "
                                            + seal.number()
                                            + " does not follow from the one before: one was"
                                            + " changed, left out or put in"));
                    return Map.of();
                }
                before = seal.hash();
                number = seal.number();
                seals.put(number, seal);
            }
            lines.add(
                    CheckLine.ok(
                            "chain",
                            seals.size()
                                    + " seals of vehicle "
                                    + list.text("vehicle")
                                    + " follow from each other; the last is "
                                    + before
                                    + ". Next: compare it with what the site says it is"));
        } catch (DocumentException e) {
            lines.add(CheckLine.notOk("chain", SEALS + " is no list of seals: " + e.getMessage()));
        }
        return seals;
    }

    private void record(String name, Map<Long, Seal> seals) {
        Optional<Seal> seal = Optional.ofNullable(seals.get(number(name)));
        if (seal.isEmpty()) {
            lines.add(CheckLine.notOk("record", name + " has no seal"));
            return;
        }
        boolean same = hash("records/" + name).equals(seal.get().record());
        boolean said = hash("statements/" + name).equals(seal.get().judgement());
        lines.add(
                same && said
                        ? CheckLine.ok(
                                "record",
                                name
                                        + " and its statement are as sealed on "
                                        + seal.get().received())
                        : CheckLine.notOk(
                                "record",
                                name
                                        + (same ? ": its statement" : "")
                                        + " is not what was sealed on "
                                        + seal.get().received()));
        String report = "reports/" + name.replace(".json", ".pdf");
        if (files.containsKey(report)) {
            report(report, name, seal.get());
        } else if (name.endsWith("-inspection.json")) {
            lines.add(CheckLine.notChecked("report", "the report of " + name + " is not there"));
        }
    }

    private void report(String report, String name, Seal seal) {
        try {
            CheckedReport checked = ReportCheck.of(bytes(report), packs, known);
            for (CheckLine line : checked.lines()) {
                lines.add(new CheckLine(line.check(), line.outcome(), report + ": " + line.says()));
            }
            boolean same =
                    checked.record().map(r -> r.equals(text("records/" + name))).orElse(false);
            if (!same) {
                lines.add(CheckLine.notOk("report", report + " is of another record than " + name));
            }
            if (!checked.seal().equals(Optional.of(CanonicalJson.write(seal.document())))) {
                lines.add(
                        CheckLine.notOk(
                                "report", report + " has another seal in it than " + SEALS));
            }
        } catch (UnreadableReportException e) {
            lines.add(CheckLine.notOk("report", report + ": " + e.getMessage()));
        }
    }

    private static long number(String name) {
        String digits = name.contains("-") ? name.substring(0, name.indexOf('-')) : "";
        return digits.matches("[1-9]\\d{0,15}") ? Long.parseLong(digits) : 0;
    }

    private String hash(String name) {
        return Sha256.of(bytes(name));
    }

    private String text(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }

    private byte[] bytes(String name) {
        return files.getOrDefault(name, new byte[0]);
    }
}
