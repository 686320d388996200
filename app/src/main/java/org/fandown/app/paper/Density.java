package org.fandown.app.paper;

/** How large the letters are; tried from large to small until the report fits one page. */
enum Density {
    ROOMY(8.4),
    USUAL(7.7),
    TIGHT(7.1),
    FINE(6.6);

    private final double points;

    Density(double points) {
        this.points = points;
    }

    /** Size of the body text (points). */
    double points() {
        return points;
    }
}
