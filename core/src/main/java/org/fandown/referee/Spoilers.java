package org.fandown.referee;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.procedure.Aspect;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.Need;
import org.fandown.procedure.Weight;

/** Says what spoiled a check: which need did not hold, since when, and which act took it away. */
final class Spoilers {
    /** A needle that is this near to what is asked for is there, psi. */
    private static final double NEAR = 2;

    private final Tale tale;
    private final Sheet sheet;
    private final Proofs proofs;

    Spoilers(Tale tale, Sheet sheet) {
        this.tale = tale;
        this.sheet = sheet;
        proofs = new Proofs(tale);
    }

    /** Everything that spoiled one check; nothing if it shows what it is meant to show. */
    List<Feedback> of(CheckStep step, Attempt attempt) {
        boolean loss =
                step.check() == Check.AIR_LOSS_APPLIED || step.check() == Check.AIR_LOSS_RELEASED;
        if (loss) {
            return new LossTest(tale, this, step, attempt, hold(step)).spoilers();
        }
        List<Proof> made = proofs.of(step, attempt);
        if (made.isEmpty()) {
            return notMade(step, attempt);
        }
        List<Feedback> found = new ArrayList<>();
        for (Need need : step.needs()) {
            for (Proof proof : made) {
                Optional<Feedback> broken = broken(step, need, proof);
                broken.ifPresent(found::add);
                if (broken.isPresent()) {
                    break;
                }
            }
        }
        return found;
    }

    /** For how long a check has to be held at least, s; 0 where nobody asks. */
    private double hold(CheckStep step) {
        double allowed = sheet.allowed(Item.LONG_ENOUGH, org.fandown.units.Unit.SECOND);
        return Math.max(0, step.manner().hold() - allowed);
    }

    /** A need that did not hold, empty if it did. */
    Optional<Feedback> broken(CheckStep step, Need need, Proof proof) {
        if (need.aspect() == Aspect.PRESSURE) {
            return pressure(step, need, proof);
        }
        long at = proof.made().from();
        if (Proofs.lasts(need.aspect())) {
            Optional<Stretch> bad =
                    proof.moment().isPresent()
                            ? Optional.of(proof.made())
                                    .filter(m -> !need.isMetBy(proof.moment().get().state()))
                            : tale.longest(
                                    at, proof.made().to(), scene -> !need.isMetBy(scene.state()));
            return bad.map(when -> feedback(step, need, when.from()));
        }
        boolean begun = tale.ever(proof.from(), at, scene -> need.isMetBy(scene.state()));
        return begun ? Optional.empty() : Optional.of(feedback(step, need, at));
    }

    private Optional<Feedback> pressure(CheckStep step, Need need, Proof proof) {
        long from = proof.from();
        long at = proof.made().from();
        double most = tale.mostOfLower(from, at);
        double least = tale.leastOfHigher(from, at);
        boolean met = most >= need.least() - NEAR && least <= need.most() + NEAR;
        if (met) {
            return Optional.empty();
        }
        boolean low = most < need.least() - NEAR;
        String shown = Words.psi(low ? most : least);
        String happened =
                step.check().title()
                        + " was begun at "
                        + Words.clock(Tale.seconds(from))
                        + " with the needles at "
                        + shown
                        + tale.lastDeed(from).map(deed -> ", after " + deed.said()).orElse("")
                        + ".";
        return Optional.of(
                new Feedback(
                        item(need),
                        Tale.seconds(from),
                        happened,
                        Words.sentence(need.why()),
                        instead(step, need)));
    }

    private Feedback feedback(CheckStep step, Need need, long tick) {
        return new Feedback(
                item(need),
                Tale.seconds(tick),
                step.check().title()
                        + " was made with "
                        + said(need, tale.at(tick).state().value(need.aspect()))
                        + since(need, tick)
                        + ".",
                Words.sentence(need.why()),
                instead(step, need));
    }

    private static String said(Need need, int value) {
        return need.aspect().title() + " " + need.aspect().say(value);
    }

    /** Since when a need did not hold, and what took it away. */
    private String since(Need need, long tick) {
        long ceased = tale.lastBefore(tick, scene -> need.isMetBy(scene.state()));
        if (ceased < 0) {
            return ", as it was from the start";
        }
        return tale.lastDeed(ceased).map(deed -> ", since " + deed.said()).orElse("");
    }

    private static String instead(CheckStep step, Need need) {
        return "Make " + Words.inside(step.check().title()) + " with " + need.asked() + ".";
    }

    private static Item item(Need need) {
        return need.weight() == Weight.SAFETY ? Safety.item(need.aspect()) : Item.UNSPOILED;
    }

    /** Nothing in the window shows that the check was made. */
    private List<Feedback> notMade(CheckStep step, Attempt attempt) {
        if (saysNo(attempt) || Figures.isAtTheEnd(tale, attempt)) {
            return List.of();
        }
        List<Feedback> found = new ArrayList<>();
        Stretch window = attempt.window();
        Proof begin = Proof.at(window.from(), window.from());
        for (Need need : step.needs()) {
            broken(step, need, begin).ifPresent(found::add);
        }
        if (!found.isEmpty()) {
            return found;
        }
        long end = Math.max(window.from(), window.to() - 1);
        for (Need need : step.needs()) {
            if (Proofs.lasts(need.aspect())) {
                broken(step, need, Proof.at(window.from(), end)).ifPresent(found::add);
            }
        }
        return found.isEmpty() ? List.of(absent(step, attempt)) : found;
    }

    private static boolean saysNo(Attempt attempt) {
        return attempt.reading().orElse(null) instanceof org.fandown.evidence.Reading.Answer answer
                && !answer.yes();
    }

    private static Feedback absent(CheckStep step, Attempt attempt) {
        String what =
                Proofs.sign(step.check())
                        .map(Sign.Kind::absent)
                        .orElse("nobody did what that check takes");
        return new Feedback(
                Item.UNSPOILED,
                attempt.seconds(),
                step.check().title()
                        + " was written down at "
                        + Words.clock(attempt.seconds())
                        + ", but from "
                        + Words.clock(Tale.seconds(attempt.window().from()))
                        + " on "
                        + what
                        + ".",
                "What was not seen proves nothing.",
                step.action() + ", and write down what you saw.");
    }
}
