package org.fandown.app.paper;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jspecify.annotations.Nullable;

/**
 * Whether two documents are the same but for the way in which their bytes are packed: every page,
 * letter, line, font, attached file and word about the document.
 */
final class SameDocument {
    /** A document with more is not one of ours. */
    private static final int MOST_PARTS = 2_000_000;

    private static final long MOST_BYTES = 256L * 1024 * 1024;
    private static final int LONGEST_LINE = 120;

    /** How a stream is packed, which is no content. */
    private static final Set<COSName> PACKING =
            Set.of(COSName.LENGTH, COSName.FILTER, COSName.DECODE_PARMS);

    private final Set<Pair> seen = new HashSet<>();
    private final Deque<Step> open = new ArrayDeque<>();
    private long bytes;

    private SameDocument() {}

    /** Two parts, by what they are and not by what they hold. */
    private record Pair(COSBase one, COSBase other) {
        @Override
        public boolean equals(@Nullable Object object) {
            return object instanceof Pair pair && pair.one == one && pair.other == other;
        }

        @Override
        public int hashCode() {
            return 31 * System.identityHashCode(one) + System.identityHashCode(other);
        }
    }

    private record Step(@Nullable COSBase one, @Nullable COSBase other, String path) {}

    /**
     * The first difference in words, empty if there is none.
     *
     * @param expected the document as it must be
     * @param found the document as it is
     * @throws IOException if one cannot be read, or is too large to be one of ours
     */
    static Optional<String> difference(PDDocument expected, PDDocument found) throws IOException {
        int pages = expected.getNumberOfPages();
        if (found.getNumberOfPages() != pages) {
            return Optional.of(
                    "it has " + found.getNumberOfPages() + " pages where " + pages + " belong");
        }
        for (int page = 1; page <= pages; page++) {
            Optional<String> words = words(page, text(expected, page), text(found, page));
            if (words.isPresent()) {
                return words;
            }
        }
        return new SameDocument().compare(expected, found);
    }

    private static List<String> text(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document).lines().toList();
    }

    private static Optional<String> words(int page, List<String> expected, List<String> found) {
        for (int i = 0; i < Math.max(expected.size(), found.size()); i++) {
            String must = i < expected.size() ? expected.get(i) : "";
            String is = i < found.size() ? found.get(i) : "";
            if (!must.equals(is)) {
                return Optional.of(
                        "page "
                                + page
                                + " says '"
                                + cut(is)
                                + "' where the record gives '"
                                + cut(must)
                                + "'");
            }
        }
        return Optional.empty();
    }

    private static String cut(String line) {
        return Clean.cut(Clean.text(line), LONGEST_LINE);
    }

    private Optional<String> compare(PDDocument expected, PDDocument found) throws IOException {
        open.add(
                new Step(
                        expected.getDocumentCatalog().getCOSObject(),
                        found.getDocumentCatalog().getCOSObject(),
                        ""));
        open.add(
                new Step(
                        expected.getDocumentInformation().getCOSObject(),
                        found.getDocumentInformation().getCOSObject(),
                        "/Info"));
        while (!open.isEmpty()) {
            Step step = open.remove();
            if (!same(step)) {
                return Optional.of("it differs at " + Clean.cut(step.path(), LONGEST_LINE));
            }
            if (seen.size() > MOST_PARTS || bytes > MOST_BYTES) {
                throw new IOException("it holds more than any report does");
            }
        }
        return Optional.empty();
    }

    private boolean same(Step step) throws IOException {
        COSBase one = real(step.one());
        COSBase other = real(step.other());
        if (one == null || other == null || one == other) {
            return one == other;
        }
        if (one instanceof COSNumber a && other instanceof COSNumber b) {
            return Float.compare(a.floatValue(), b.floatValue()) == 0;
        }
        if (one instanceof COSString a && other instanceof COSString b) {
            return Arrays.equals(a.getBytes(), b.getBytes());
        }
        if (one.getClass() != other.getClass()) {
            return false;
        }
        if (one instanceof COSArray || one instanceof COSDictionary) {
            return !seen.add(new Pair(one, other)) || holdsTheSame(one, other, step.path());
        }
        return one.equals(other);
    }

    private boolean holdsTheSame(COSBase one, COSBase other, String path) throws IOException {
        if (one instanceof COSArray a && other instanceof COSArray b) {
            for (int i = 0; i < Math.min(a.size(), b.size()); i++) {
                open.add(new Step(a.get(i), b.get(i), path + "[" + i + "]"));
            }
            return a.size() == b.size();
        }
        boolean stream = one instanceof COSStream;
        Set<COSName> keys = keys((COSDictionary) one, stream);
        for (COSName key : keys) {
            open.add(
                    new Step(
                            ((COSDictionary) one).getItem(key),
                            ((COSDictionary) other).getItem(key),
                            path + "/" + key.getName()));
        }
        return keys.equals(keys((COSDictionary) other, stream))
                && (!stream || sameBytes((COSStream) one, (COSStream) other));
    }

    private static Set<COSName> keys(COSDictionary dictionary, boolean stream) {
        Set<COSName> keys = new HashSet<>(dictionary.keySet());
        if (stream) {
            keys.removeAll(PACKING);
        }
        return keys;
    }

    private boolean sameBytes(COSStream one, COSStream other) throws IOException {
        try (InputStream a = one.createInputStream();
                InputStream b = other.createInputStream()) {
            byte[] expected = a.readAllBytes();
            byte[] found = b.readNBytes(expected.length + 1);
            bytes += expected.length + (long) found.length;
            return Arrays.equals(expected, found);
        }
    }

    private static @Nullable COSBase real(@Nullable COSBase base) {
        return base instanceof COSObject reference ? reference.getObject() : base;
    }
}
