package org.fandown.app.web;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.fandown.app.store.KeptRecord;
import org.fandown.document.Json;
import org.fandown.document.Tree;
import org.fandown.record.Seal;

/**
 * What an auditor or an officer is handed: the records of one vehicle from a day on, each as JSON
 * and, where it is an inspection, as the signed report, with the seals that chain them. Whoever
 * does not trust the site can check all of it without the site.
 */
final class HandOver {
    private static final String READ_ME =
            """
            Records of one vehicle, handed over for an audit or at the roadside.

            records/     each record as it was sent, canonical JSON (RFC 8785)
            statements/  what the site made of each when it arrived: verdict, findings, defects
            reports/     the signed report of each inspection, with the same record inside
            seals.json   one seal for each record of the vehicle, also for those that are not here

            A seal holds the SHA-256 of its record and of its statement, and the SHA-256 of the seal
            before: of the site, and of the vehicle. To check it all: fandown verify PACKAGE.zip
            By hand: the SHA-256 of records/N... is `record` in seal N, that of statements/N... is
            `judgement`, and that of seal N itself, as canonical JSON, is `vehicle-before` in the
            next seal of the list.
            """;

    private final List<Seal> seals;
    private final Printer printer;

    /** Prints the report of an inspection. */
    @FunctionalInterface
    interface Printer {
        byte[] print(KeptRecord record);
    }

    /**
     * A package.
     *
     * @param seals all seals of the vehicle, in order
     * @param printer prints reports
     */
    HandOver(List<Seal> seals, Printer printer) {
        this.seals = seals;
        this.printer = printer;
    }

    /**
     * Writes the package.
     *
     * @param records the records in it, in order
     * @param out where to; not closed
     */
    void write(Iterable<KeptRecord> records, OutputStream out) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
        add(zip, "READ-ME.txt", READ_ME);
        for (KeptRecord record : records) {
            String name = record.seal().number() + "-" + record.head().kind();
            add(zip, "records/" + name + ".json", record.content());
            add(zip, "statements/" + name + ".json", record.statement());
            if (record.head().kind().equals("inspection")) {
                add(zip, "reports/" + name + ".pdf", printer.print(record));
            }
        }
        add(zip, "seals.json", Json.write(seals()));
        zip.finish();
    }

    private org.fandown.document.Node seals() {
        Tree.ListBuilder list = Tree.list();
        seals.forEach(seal -> list.add(seal.document()));
        return Tree.map()
                .put("format", "fandown-seals/1")
                .put("vehicle", seals.isEmpty() ? "none" : seals.get(0).vehicle())
                .put("seals", list)
                .build();
    }

    private static void add(ZipOutputStream zip, String name, String text) throws IOException {
        add(zip, name, text.getBytes(StandardCharsets.UTF_8));
    }

    private static void add(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(bytes);
        zip.closeEntry();
    }
}
