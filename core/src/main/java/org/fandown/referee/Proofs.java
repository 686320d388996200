package org.fandown.referee;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.evidence.Reading;
import org.fandown.practice.Verb;
import org.fandown.procedure.Aspect;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.Need;

/** Finds where in its window a check was really made. */
final class Proofs {
    private final Tale tale;

    Proofs(Tale tale) {
        this.tale = tale;
    }

    /** What the vehicle shows by itself when a check is made, empty if nothing. */
    static Optional<Sign.Kind> sign(Check check) {
        return Optional.ofNullable(
                switch (check) {
                    case GOVERNOR_CUT_OUT -> Sign.Kind.CUT_OUT;
                    case GOVERNOR_CUT_IN -> Sign.Kind.CUT_IN;
                    case LOW_AIR_WARNING -> Sign.Kind.WARNING;
                    case PARKING_VALVE_CLOSING -> Sign.Kind.PARKING_OUT;
                    case TRAILER_SUPPLY_CLOSING, TRACTOR_PROTECTION -> Sign.Kind.TRAILER_OUT;
                    default -> null;
                });
    }

    /** What a person does to make a check, empty where that is not to be told. */
    private static List<Verb> verbs(Check check) {
        return switch (check) {
            case PUSHROD_APPLIED_STROKE -> List.of(Verb.MEASURE);
            case PUSHROD_FREE_STROKE -> List.of(Verb.PRY);
            case NO_AUDIBLE_LEAK -> List.of(Verb.LISTEN, Verb.STAND);
            case RESERVOIR_DRAIN -> List.of(Verb.OPEN_DRAIN);
            case WALK_ROUND -> List.of(Verb.LOOK);
            case ABS_LAMP, TRAILER_ABS_LAMP -> List.of(Verb.KEY);
            case STOP_LAMPS, EXHAUST_VALVES -> List.of(Verb.FOOT_BRAKE);
            case PARKING_BRAKE_HOLD,
                    TRAILER_BRAKES_HOLD,
                    TRAILER_SPRING_BRAKES_APPLY,
                    COUPLING_TUG ->
                    List.of(Verb.GEAR);
            default -> List.of();
        };
    }

    private static boolean rolls(Check check) {
        return switch (check) {
            case PARKING_BRAKE_RELEASE, SERVICE_BRAKE_RESPONSE, TRAILER_SERVICE_BRAKES -> true;
            default -> false;
        };
    }

    /** Where the check was made; empty if nothing shows that it was. */
    List<Proof> of(CheckStep step, Attempt attempt) {
        Check check = step.check();
        Stretch window = attempt.window();
        Optional<Sign.Kind> kind = sign(check);
        if (kind.isPresent()) {
            return signs(attempt, kind.get());
        }
        List<Verb> verbs = verbs(check);
        if (!verbs.isEmpty()) {
            return deeds(check, window, verbs);
        }
        return rolls(check) ? rolling(window) : whole(step, window);
    }

    /** Where a check that the place does not ask for showed its sign. */
    List<Proof> ofSign(Attempt attempt) {
        return sign(attempt.check()).map(kind -> signs(attempt, kind)).orElse(List.of());
    }

    /** Of several signs in a window the one counts at which the figure was read. */
    private List<Proof> signs(Attempt attempt, Sign.Kind kind) {
        Stretch window = attempt.window();
        List<Sign> signs = tale.signs(window.from(), window.to(), kind);
        Sign best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Sign sign : signs) {
            double off = off(attempt, sign);
            if (off <= least) {
                best = sign;
                least = off;
            }
        }
        return best == null ? List.of() : List.of(before(window, best));
    }

    /** What a sign ends, such as a knob that is in, held until the tick before. */
    private static Proof before(Stretch window, Sign sign) {
        return Proof.at(window.from(), Math.max(window.from(), sign.tick() - 1));
    }

    private double off(Attempt attempt, Sign sign) {
        if (attempt.reading().orElse(null) instanceof Reading.Value value) {
            double psi = value.values().get(0).valueIn(org.fandown.units.Unit.PSI);
            double low = Math.abs(tale.needles.lower(sign.tick()) - psi);
            double high = Math.abs(tale.needles.higher(sign.tick()) - psi);
            return Math.min(low, high);
        }
        return 0;
    }

    private List<Proof> deeds(Check check, Stretch window, List<Verb> verbs) {
        List<Proof> proofs = new ArrayList<>();
        for (Tale.Deed deed : tale.deeds(window.from(), window.to(), verbs)) {
            String value = deed.entry().action().value();
            boolean counts =
                    switch (deed.verb()) {
                        case GEAR -> !value.equals("neutral");
                        case KEY -> value.equals("on");
                        case STAND -> !deed.scene().isInCab();
                        case FOOT_BRAKE -> deed.scene().pedal() > Scene.RELEASED;
                        case MEASURE ->
                                check != Check.PUSHROD_APPLIED_STROKE
                                        || deed.scene().pedal() > Scene.RELEASED;
                        default -> true;
                    };
            if (counts) {
                proofs.add(Proof.at(window.from(), deed));
            }
        }
        boolean last = verbs.contains(Verb.GEAR) && !proofs.isEmpty();
        return last ? proofs.subList(proofs.size() - 1, proofs.size()) : proofs;
    }

    private List<Proof> rolling(Stretch window) {
        return tale.longest(window.from(), window.to(), Scene::moves)
                .map(moving -> List.of(Proof.at(window.from(), moving.from())))
                .orElse(List.of());
    }

    /** The last stretch in which all that has to last held; else the moment before the record. */
    private List<Proof> whole(CheckStep step, Stretch window) {
        Optional<Stretch> good =
                tale.longest(window.from(), window.to(), scene -> allLasting(step.needs(), scene));
        long end = Math.max(window.from(), window.to() - 1);
        return List.of(Proof.at(window.from(), good.map(Stretch::from).orElse(end)));
    }

    static boolean allLasting(List<Need> needs, Scene scene) {
        for (Need need : needs) {
            if (lasts(need.aspect()) && !need.isMetBy(scene.state())) {
                return false;
            }
        }
        return true;
    }

    /** Whether a need has to hold as long as the check is made, and not only when it begins. */
    static boolean lasts(Aspect aspect) {
        return switch (aspect) {
            case PRESSURE, COMPRESSOR, REST, TRAILER_AIR, SUPPLY_RESERVOIR -> false;
            default -> true;
        };
    }
}
