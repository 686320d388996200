package org.fandown.app.cli;

import org.fandown.document.Names;
import org.fandown.document.Tree;
import org.fandown.trace.LossAdvice;
import org.fandown.trace.RecognisedWords;
import org.fandown.trace.SequentialTest;
import org.fandown.units.Decimals;

/** What a sequential test says of an air loss, in words and for programs. */
final class LossWords {
    private static final int DECIMALS = 2;

    private LossWords() {}

    /** While the test goes on. */
    static String running(LossAdvice advice) {
        return RecognisedWords.text(advice.loss())
                + ", held for "
                + seconds(advice.held())
                + ". "
                + state(advice)
                + " "
                + whatNow(advice);
    }

    /** After the test. */
    static String ended(LossAdvice advice) {
        return advice.limit().check().title()
                + ", held for "
                + seconds(advice.held())
                + ": "
                + decapital(state(advice))
                + " "
                + whatWas(advice);
    }

    private static String state(LossAdvice advice) {
        String limit = "the limit, " + advice.limit().words();
        return switch (advice.state()) {
            case WITHIN -> "Certain to be within " + limit + ".";
            case OVER -> "Certain to be over " + limit + ".";
            case UNDECIDED -> "Not decided against " + limit + ".";
        };
    }

    private static String whatNow(LossAdvice advice) {
        boolean timeOver = advice.left() <= 0;
        String asked = seconds(advice.limit().asked());
        String left = seconds(Math.ceil(advice.left()));
        if (!advice.isDecided()) {
            String wait =
                    Double.isNaN(advice.more())
                            ? "Waiting will hardly decide it: the loss is too near the limit for"
                                    + " this gauge."
                            : "About " + seconds(Math.ceil(advice.more())) + " more are needed.";
            return wait
                    + (timeOver
                            ? " The " + asked + " that the place asks for are over."
                            : " The place asks for " + asked + ": " + left + " to go.");
        }
        return timeOver
                ? "The " + asked + " that the place asks for are over: you may stop."
                : "The measurement could stop now, but the place asks for "
                        + asked
                        + ": hold for "
                        + left
                        + " more.";
    }

    private static String whatWas(LossAdvice advice) {
        String asked = seconds(advice.limit().asked());
        String decided =
                advice.isDecided()
                        ? "That was certain after " + seconds(advice.decidedAfter()) + "."
                        : Double.isNaN(advice.more())
                                ? "More time would hardly have decided it: a finer gauge would."
                                : "About "
                                        + seconds(Math.ceil(advice.more()))
                                        + " more were needed.";
        return advice.left() > 0
                ? decided + " The place asks for " + asked + ": do it again for that long."
                : decided + " The place asks for " + asked + ".";
    }

    private static String seconds(double seconds) {
        return Decimals.format(seconds, 0) + " s";
    }

    private static String decapital(String text) {
        return text.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + text.substring(1);
    }

    /** For programs. */
    static Tree.MapBuilder put(Tree.MapBuilder map, LossAdvice advice) {
        double[] ends = RecognisedWords.interval(advice.loss());
        map.put("check", advice.limit().check().id())
                .put("rule", advice.limit().rule())
                .put("state", Names.kebab(advice.state()))
                .put("from", advice.loss().from(), DECIMALS)
                .put("to", advice.loss().to(), DECIMALS)
                .put("value", psi(advice.loss().value()))
                .put("low", psi(ends[0]))
                .put("high", psi(ends[1]))
                .put("most", psi(advice.limit().most()))
                .put("held", inSeconds(advice.held()))
                .put("asked", inSeconds(advice.limit().asked()));
        if (advice.state() == SequentialTest.State.UNDECIDED) {
            if (!Double.isNaN(advice.more())) {
                map.put("more", inSeconds(Math.ceil(advice.more())));
            }
        } else {
            map.put("decided-after", inSeconds(advice.decidedAfter()));
        }
        return map.put("may-stop", advice.isDecided() && advice.left() <= 0);
    }

    private static Tree.MapBuilder psi(double value) {
        return Tree.map().put("value", value, DECIMALS).put("unit", "psi");
    }

    private static Tree.MapBuilder inSeconds(double value) {
        return Tree.map().put("value", value, 1).put("unit", "s");
    }
}
