package org.fandown.app.paper;

import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.common.PDNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/** The files attached to a document that a stranger may have made. */
final class Attached {
    /** More than the largest record with its photos, bytes. */
    private static final int MOST_BYTES = 64 * 1024 * 1024;

    private static final int MOST_FILES = 20;

    private Attached() {}

    /**
     * The files by name.
     *
     * @throws IOException if they are more or larger than those of any report
     */
    static Map<String, byte[]> of(PDDocument document) throws IOException {
        PDDocumentNameDictionary names = document.getDocumentCatalog().getNames();
        Map<String, byte[]> files = new TreeMap<>();
        if (names != null && names.getEmbeddedFiles() != null) {
            collect(names.getEmbeddedFiles(), files, 0);
        }
        return files;
    }

    private static void collect(
            PDNameTreeNode<PDComplexFileSpecification> node, Map<String, byte[]> files, int depth)
            throws IOException {
        if (depth > MOST_FILES) {
            throw new IOException("its list of files goes too deep");
        }
        Map<String, PDComplexFileSpecification> here = node.getNames();
        if (here != null) {
            for (Map.Entry<String, PDComplexFileSpecification> each : here.entrySet()) {
                PDEmbeddedFile file = each.getValue().getEmbeddedFile();
                if (file != null) {
                    files.put(each.getKey(), bytes(file));
                }
                if (files.size() > MOST_FILES) {
                    throw new IOException("more than " + MOST_FILES + " files are attached");
                }
            }
        }
        if (node.getKids() != null) {
            for (PDNameTreeNode<PDComplexFileSpecification> kid : node.getKids()) {
                collect(kid, files, depth + 1);
            }
        }
    }

    private static byte[] bytes(PDEmbeddedFile file) throws IOException {
        try (InputStream in = file.createInputStream()) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new IOException("an attached file is larger than any record");
            }
            return bytes;
        }
    }
}
