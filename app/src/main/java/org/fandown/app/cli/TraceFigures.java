package org.fandown.app.cli;

import java.util.List;
import org.fandown.plot.Curve;
import org.fandown.plot.SlopeLine;
import org.fandown.plot.TraceView.Figure;
import org.fandown.trace.Channel;
import org.fandown.trace.Recognised;
import org.fandown.trace.Recognised.Kind;
import org.fandown.trace.Recognised.Point;
import org.fandown.trace.RecognisedWords;
import org.fandown.units.Decimals;

/** What was measured in a trace, as names and figures for a picture or a table. */
final class TraceFigures {
    private static final double MINUTE = 60;

    private TraceFigures() {}

    /** The name of a thing recognised. */
    static String name(Kind kind) {
        return switch (kind) {
            case BUILD_UP -> "Build-up";
            case CUT_OUT -> "Governor cut-out";
            case CUT_IN -> "Governor cut-in";
            case LOSS_RELEASED -> "Air loss, brakes released";
            case LOSS_APPLIED -> "Air loss, brakes applied";
            case LOSS -> "Air loss, brakes not known";
            case WARNING -> "Low-air warning";
            case PARKING_CLOSED -> "Parking brake set itself";
            case TRAILER_CLOSED -> "Trailer supply valve closed";
            case APPLICATIONS -> "Brake applications, engine off";
            case SUPPLY_DRAINED -> "Supply reservoir emptied";
        };
    }

    /** What was measured: {@code 1.23 psi in 1 min}, {@code 85.0 to 100.0 psi}. */
    static String value(Recognised found) {
        if (RecognisedWords.hasInterval(found.kind())) {
            String value = Decimals.format(found.value(), decimals(found)) + " psi";
            return switch (found.kind()) {
                case LOSS, LOSS_APPLIED, LOSS_RELEASED -> value + " in 1 min";
                case SUPPLY_DRAINED -> value + " lost";
                default -> value;
            };
        }
        String times =
                found.kind() == Kind.APPLICATIONS
                        ? Decimals.format(found.value(), 0) + " times, "
                        : "";
        List<Point> points = found.points();
        if (points.isEmpty()) {
            return times;
        }
        return times
                + Decimals.format(points.get(0).psi(), 1)
                + " to "
                + Decimals.format(points.get(points.size() - 1).psi(), 1)
                + " psi";
    }

    /** The interval that holds the true value in about 95 of 100 cases; empty if there is none. */
    static String interval(Recognised found) {
        if (!RecognisedWords.hasInterval(found.kind())) {
            return "";
        }
        double[] ends = RecognisedWords.interval(found);
        return Decimals.format(ends[0], decimals(found))
                + " to "
                + Decimals.format(ends[1], decimals(found));
    }

    private static int decimals(Recognised found) {
        return found.kind().isLoss() ? 2 : 1;
    }

    /** The mean speed of the engine meanwhile; empty if nothing tells. */
    static String engine(Recognised found) {
        return Double.isNaN(found.engine()) ? "" : Decimals.format(found.engine(), 0) + " rpm";
    }

    /** What to draw into the picture. */
    static Figure of(Recognised found, List<Curve> circuits) {
        Curve curve = new Curve("measured");
        switch (found.kind()) {
            case BUILD_UP, APPLICATIONS -> {
                found.points().forEach(point -> curve.add(point.seconds(), point.psi()));
                return new Figure(curve, 0, true);
            }
            case LOSS, LOSS_APPLIED, LOSS_RELEASED -> {
                double fall = found.value() / MINUTE;
                Curve line = SlopeLine.of(circuits, found.from(), found.to(), fall);
                return new Figure(line, 0, true);
            }
            case SUPPLY_DRAINED -> {
                return Figure.none();
            }
            default -> {
                // A short line from when it began to when it was certain.
                double[] ends = RecognisedWords.interval(found);
                curve.add(found.from(), found.value());
                curve.add(found.to(), found.value());
                return new Figure(curve, (ends[1] - ends[0]) / 2, true);
            }
        }
    }

    /** What a channel is called beside its picture. */
    static String title(Channel channel) {
        return switch (channel) {
            case ENGINE_SPEED -> "engine, rpm";
            case PEDAL -> "brake pedal, %";
            case APPLICATION -> "application pressure, psi";
            case SPEED -> "road speed, km/h";
            case BRAKE_SWITCH -> "brake pedal down";
            case PARKING_SWITCH -> "parking brake set";
            case WARNING -> "low-air warning on";
            case TRAILER_SHUT -> "trailer supply shut";
            default -> channel.title();
        };
    }
}
