package org.fandown.app.paper;

import org.fandown.check.PlaceCode;

/** The sheet of paper that is usual in a place. */
enum PaperSize {
    /** 8.5 in by 11 in. */
    LETTER("letter"),
    /** 210 mm by 297 mm. */
    A4("a4");

    private final String css;

    PaperSize(String css) {
        this.css = css;
    }

    String css() {
        return css;
    }

    static PaperSize of(PlaceCode place) {
        String country = place.code().substring(0, 2);
        return country.equals("US") || country.equals("CA") ? LETTER : A4;
    }
}
