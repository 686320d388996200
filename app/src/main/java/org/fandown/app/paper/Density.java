package org.fandown.app.paper;

/**
 * How large the letters are; tried from large to small until the report fits one page. Setting a
 * page takes time, so a size at which so many letters have never fitted is not tried.
 */
enum Density {
    ROOMY(8.4, 7300),
    USUAL(7.7, 7700),
    TIGHT(7.1, 9600),
    FINE(6.6, 12_000);

    private final double points;
    private final int mostLetters;

    Density(double points, int mostLetters) {
        this.points = points;
        this.mostLetters = mostLetters;
    }

    /** Size of the body text (points). */
    double points() {
        return points;
    }

    /** Whether a report of so many letters may fit one page; found by trial. */
    boolean mayHold(int letters) {
        return letters <= mostLetters;
    }
}
