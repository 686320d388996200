package org.fandown.app.paper;

/** How large the letters are; tried from large to small until the report fits one page. */
enum Density {
    ROOMY(8.6),
    USUAL(7.8),
    TIGHT(7.0);

    private final double points;

    Density(double points) {
        this.points = points;
    }

    /** Size of the body text (points). */
    double points() {
        return points;
    }
}
