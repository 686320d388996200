package org.fandown.app.paper;

import java.util.ArrayList;
import java.util.List;

/** Small print in two columns of about equal length. */
final class TwoColumns {
    private final List<Paragraph> paragraphs = new ArrayList<>();

    /** A paragraph with its first words in bold; a heading has no text. */
    private record Paragraph(String lead, String text) {
        private static final int LETTERS_OF_A_LINE = 95;

        int lines() {
            return 1 + (lead.length() + text.length()) / LETTERS_OF_A_LINE;
        }

        boolean isHeading() {
            return text.isEmpty();
        }
    }

    void heading(String text) {
        paragraphs.add(new Paragraph(text, ""));
    }

    void add(String lead, String text) {
        paragraphs.add(new Paragraph(lead, text));
    }

    /**
     * Fills the left column to about half of the lines and the right one with the rest. A heading
     * does not stay behind alone.
     */
    void print(Tag page) {
        int left = (paragraphs.stream().mapToInt(Paragraph::lines).sum() + 1) / 2;
        Tag row = page.add("table", "small columns").columns(List.of(50, 50)).add("tr");
        Tag column = row.add("td", "first");
        Tag other = row.add("td");
        for (Paragraph paragraph : paragraphs) {
            boolean fits = left > (paragraph.isHeading() ? 1 : 0);
            Tag line = (fits ? column : other).add("div");
            line.add("span", "strong").text(paragraph.lead());
            line.text(paragraph.text());
            left = fits ? left - paragraph.lines() : 0;
        }
    }
}
