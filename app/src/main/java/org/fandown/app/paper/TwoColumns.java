package org.fandown.app.paper;

import java.util.ArrayList;
import java.util.List;

/** Small print in two columns of about equal length. */
final class TwoColumns {
    private static final int LETTERS_OF_A_LINE = 95;

    private final List<Piece> pieces = new ArrayList<>();

    /**
     * A part of a paragraph before or after which a column may end.
     *
     * @param starts whether a paragraph starts with it
     * @param lead words in bold, empty if none
     * @param text words that follow, empty for a heading
     */
    private record Piece(boolean starts, String lead, String text) {
        boolean isHeading() {
            return text.isEmpty();
        }

        int letters() {
            return lead.length() + text.length();
        }
    }

    void heading(String text) {
        pieces.add(new Piece(true, text, ""));
    }

    /** Adds a paragraph that stays in one column. */
    void add(String lead, String text) {
        pieces.add(new Piece(true, lead, text));
    }

    /** Adds a paragraph of which a part may go to the next column. */
    void add(String lead, List<String> parts) {
        for (int i = 0; i < parts.size(); i++) {
            pieces.add(new Piece(i == 0, i == 0 ? lead : "", parts.get(i) + " "));
        }
    }

    /** Divides the text where the longer column is shortest. */
    void print(Tag page) {
        Tag row = page.add("table", "small columns").columns(List.of(50, 50)).add("tr");
        int split = split();
        print(row.add("td", "first"), pieces.subList(0, split));
        print(row.add("td"), pieces.subList(split, pieces.size()));
    }

    private static void print(Tag column, List<Piece> pieces) {
        Tag paragraph = column;
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            paragraph = i == 0 || piece.starts() ? column.add("div") : paragraph;
            if (!piece.lead().isEmpty()) {
                paragraph.add("span", "strong").text(piece.lead());
            }
            paragraph.text(piece.text());
        }
    }

    /** How many pieces go to the left. A heading does not stay behind alone. */
    private int split() {
        int best = pieces.size();
        int length = lines(pieces);
        for (int i = 1; i < pieces.size(); i++) {
            int left = lines(pieces.subList(0, i));
            int right = lines(pieces.subList(i, pieces.size()));
            if (Math.max(left, right) < length && !pieces.get(i - 1).isHeading()) {
                length = Math.max(left, right);
                best = i;
            }
        }
        return best;
    }

    private static int lines(List<Piece> pieces) {
        int lines = 0;
        int letters = 0;
        for (Piece piece : pieces) {
            if (piece.starts() && letters > 0) {
                lines += 1 + letters / LETTERS_OF_A_LINE;
                letters = 0;
            }
            letters += piece.letters();
        }
        return letters > 0 ? lines + 1 + letters / LETTERS_OF_A_LINE : lines;
    }
}
