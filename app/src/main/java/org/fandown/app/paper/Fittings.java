package org.fandown.app.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.vehicle.Adjuster;
import org.fandown.vehicle.Axle;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.WheelEnd;

/** What is fitted to an axle, in the few words that fit beside its drawing. */
final class Fittings {
    /** Letters that fit the column, were they of one point; found by trial. */
    private static final double LETTERS_AT_ONE_POINT = 200;

    private static final int LONGEST_NAME = 30;

    private final int lettersOfALine;

    Fittings(Density density) {
        this.lettersOfALine = (int) (LETTERS_AT_ONE_POINT / density.points());
    }

    /** Chamber, spring brake and adjuster; told for each end where they differ. */
    List<String> of(Axle axle) {
        List<String> left = fitted(axle.left());
        List<String> right = fitted(axle.right());
        if (left.equals(right)) {
            return lines("", left);
        }
        List<String> both = new ArrayList<>(lines("L ", left));
        both.addAll(lines("R ", right));
        return both;
    }

    /** One line if it is short enough, else two. */
    private List<String> lines(String side, List<String> fitted) {
        String line = side + String.join(", ", fitted);
        return line.length() <= lettersOfALine || fitted.size() < 2
                ? List.of(line)
                : List.of(
                        side + fitted.get(0) + ",",
                        String.join(", ", fitted.subList(1, fitted.size())));
    }

    private static List<String> fitted(WheelEnd end) {
        if (!end.isBraked()) {
            return List.of("no brake");
        }
        List<String> fitted = new ArrayList<>();
        String brake = org.fandown.document.Names.kebab(end.brake());
        fitted.add(Clean.cut(end.chamber().map(Chamber::text).orElse(brake), LONGEST_NAME));
        if (end.springBrake()) {
            fitted.add("spring");
        }
        adjuster(end.adjuster()).ifPresent(fitted::add);
        return fitted;
    }

    private static Optional<String> adjuster(Optional<Adjuster> adjuster) {
        return adjuster.map(
                kind ->
                        switch (kind) {
                            case AUTOMATIC -> "auto";
                            case MANUAL -> "manual";
                            case INTERNAL -> "internal";
                            case NONE -> "no adjuster";
                        });
    }
}
