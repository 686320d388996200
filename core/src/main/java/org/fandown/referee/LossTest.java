package org.fandown.referee;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.fandown.check.Check;
import org.fandown.procedure.Aspect;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.Need;

/** A timed air loss: whether the pedal was where it had to be, and all else, for long enough. */
final class LossTest {
    /** How long before the clock the pressure is looked at, s: the pedal takes its share. */
    private static final double BEFORE = 3;

    private final Tale tale;
    private final Spoilers spoilers;
    private final CheckStep step;
    private final Attempt attempt;
    private final double hold;
    private final boolean applied;

    LossTest(Tale tale, Spoilers spoilers, CheckStep step, Attempt attempt, double hold) {
        this.tale = tale;
        this.spoilers = spoilers;
        this.step = step;
        this.attempt = attempt;
        this.hold = hold;
        applied = step.check() == Check.AIR_LOSS_APPLIED;
    }

    private boolean pedal(Scene scene) {
        return scene.pedal() == (applied ? Scene.FLOOR : Scene.RELEASED);
    }

    private Optional<Stretch> longest(Predicate<Scene> holds) {
        return tale.longest(attempt.window().from(), attempt.window().to(), holds);
    }

    List<Feedback> spoilers() {
        Optional<Stretch> good = longest(scene -> pedal(scene) && allMet(scene));
        if (good.isPresent() && good.get().seconds() >= hold) {
            return pressure(good.get());
        }
        Optional<Stretch> pressed = longest(this::pedal);
        if (pressed.isEmpty()) {
            return List.of(pedalWrong(attempt.window().from()));
        }
        List<Feedback> broken = broken(pressed.get());
        if (pressed.get().seconds() >= hold || !broken.isEmpty()) {
            return broken;
        }
        boolean left = pressed.get().to() < attempt.window().to() - Tale.ticks(1);
        boolean enough = attempt.window().seconds() >= hold;
        return List.of(left && enough ? pedalWrong(pressed.get().to()) : tooShort(pressed.get()));
    }

    /** The stretch in which the loss can have been read, empty if there was none. */
    Optional<Stretch> read() {
        return longest(this::pedal);
    }

    private boolean allMet(Scene scene) {
        for (Need need : step.needs()) {
            if (need.aspect() != Aspect.PRESSURE && !need.isMetBy(scene.state())) {
                return false;
            }
        }
        return true;
    }

    private List<Feedback> pressure(Stretch good) {
        Proof proof = Proof.of(Math.max(0, good.from() - Tale.ticks(BEFORE)), good);
        List<Feedback> found = new ArrayList<>();
        for (Need need : step.needs()) {
            if (need.aspect() == Aspect.PRESSURE) {
                spoilers.broken(step, need, proof).ifPresent(found::add);
            }
        }
        return found;
    }

    private List<Feedback> broken(Stretch pressed) {
        List<Feedback> found = new ArrayList<>();
        Proof proof = Proof.of(pressed.from(), pressed);
        for (Need need : step.needs()) {
            if (need.aspect() != Aspect.PRESSURE) {
                spoilers.broken(step, need, proof).ifPresent(found::add);
            }
        }
        found.addAll(pressure(pressed));
        return found;
    }

    private Feedback pedalWrong(long tick) {
        String by = tale.lastDeed(tick).map(deed -> ", after " + deed.said()).orElse("");
        String happened =
                applied
                        ? step.check().title() + ": the pedal was not held on the floor" + by + "."
                        : step.check().title() + ": the pedal was pressed" + by + ".";
        return new Feedback(
                Item.UNSPOILED,
                Tale.seconds(tick),
                happened,
                applied
                        ? "With the pedal up the chambers and their hoses are not in the test."
                        : "An application takes air that no leak took.",
                applied
                        ? "Press the pedal to the floor and do not move your foot until the time"
                                + " is over."
                        : "Keep your foot off the pedal until the time is over.");
    }

    private Feedback tooShort(Stretch pressed) {
        int asked = step.manner().hold();
        return new Feedback(
                Item.LONG_ENOUGH,
                Tale.seconds(pressed.to()),
                step.check().title()
                        + " was held for "
                        + Words.seconds(pressed.seconds())
                        + " of "
                        + asked
                        + " s.",
                "In a shorter time a leak that matters does not show on the needle.",
                "Watch the needles for the whole " + asked + " s.");
    }
}
