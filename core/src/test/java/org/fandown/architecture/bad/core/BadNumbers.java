package org.fandown.architecture.bad.core;

/** Does arithmetic and makes texts as the core must not. */
public abstract class BadNumbers {
    float field = 1;

    double remainder(double a, double b) {
        return a % b;
    }

    double remainderInPlace(double a) {
        double rest = a;
        rest %= 360;
        return rest;
    }

    double product(float a, float b) {
        return a * b;
    }

    double narrowed(double a) {
        return (float) a;
    }

    String joined(double a) {
        return "pressure " + a;
    }

    String formatted(double a) {
        return "pressure %.1f psi".formatted(a);
    }

    String hidden(String format) {
        return format.formatted("a");
    }
}
