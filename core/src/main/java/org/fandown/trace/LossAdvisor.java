package org.fandown.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.fandown.check.Check;
import org.fandown.trace.Recognised.Kind;
import org.fandown.units.Num;

/**
 * Watches air losses while they are measured and says when it is certain that a limit is kept or
 * broken, or about how long that will take.
 *
 * <p>It looks ever more seldom, since a look takes some work. What became certain stays said.
 *
 * <p>What it is certain of is what the time that the rule asks for will show, or has shown. Another
 * time shows more or less: air that was cooled by an application, or warmed by pumping, comes back
 * to the temperature around it, A e^(-t / {@value #TAU} s), A of standard deviation {@value
 * #WARMING} psi (assumption, from simulated tests), and a leak slows as the pressure falls.
 */
public final class LossAdvisor {
    /**
     * The first look is this long after the circuits have settled, s; then each 1.3 times later.
     */
    private static final double FIRST = 10;

    private static final double GROWTH = 1.3;

    /** A loss is not measured over more than this, s. */
    private static final double LONGEST = 300;

    /** More tests than this in one trace are not kept. */
    private static final int MOST = 1000;

    /** Time in which the air in a reservoir takes the temperature around it, s. */
    private static final double TAU = 40;

    /** Standard deviation of what that adds to the pressure or takes from it, psi. */
    private static final double WARMING = 2.5;

    /** Pressure that a leak slows in proportion to, psi absolute: the least of a test, roughly. */
    private static final double ABSOLUTE = 100;

    /**
     * While no pressure has changed nothing tells the step of the gauge; then it may be as coarse
     * as a network tells it, psi.
     */
    private static final double UNSEEN_STEP = 1.16;

    private static final double MINUTE = 60;

    private final List<LossLimit> limits;
    private final Consumer<LossAdvice> said;
    private final List<LossAdvice> ended = new ArrayList<>();
    private final double[] decidedAfter;
    private final SequentialTest.State[] states;
    private final boolean[] timeSaid;
    private double next = FIRST;
    private double before;
    private double unseenStep = UNSEEN_STEP;

    /**
     * Makes an advisor.
     *
     * @param limits the limits, of either loss
     * @param said is told what is new while a test goes on, and when it ends
     */
    public LossAdvisor(List<LossLimit> limits, Consumer<LossAdvice> said) {
        this.limits = List.copyOf(limits);
        this.said = said;
        decidedAfter = new double[limits.size()];
        states = new SequentialTest.State[limits.size()];
        timeSaid = new boolean[limits.size()];
        forget();
    }

    /** Returns what was known at the end of each test, in order. */
    public List<LossAdvice> ended() {
        return List.copyOf(ended);
    }

    private void forget() {
        Arrays.fill(decidedAfter, Double.NaN);
        Arrays.fill(states, SequentialTest.State.UNDECIDED);
        Arrays.fill(timeSaid, false);
        next = FIRST;
        before = 0;
    }

    /** Looks at a watch that was just given a sample, if it is time to look. */
    void look(TraceWatch watch) {
        double open = watch.lossOpen();
        if (open < before) {
            forget();
        }
        before = open;
        if (open < next || open > LONGEST) {
            return;
        }
        next = Math.max(open, next) * GROWTH;
        Recognised soFar = isLimited(watch.lossKind()) ? watch.lossSoFar() : null;
        if (soFar == null) {
            return;
        }
        unseenStep = watch.step() > 0 ? 0 : UNSEEN_STEP;
        double held = open + Losses.SETTLE;
        for (int i = 0; i < limits.size(); i++) {
            LossLimit limit = limits.get(i);
            if (isOf(limit.check(), soFar.kind())) {
                look(i, soFar, held);
                double askedAt = limit.asked() - Losses.SETTLE;
                if (open < askedAt && next > askedAt) {
                    next = askedAt;
                }
            }
        }
    }

    private void look(int i, Recognised soFar, double held) {
        LossLimit limit = limits.get(i);
        boolean was = states[i] != SequentialTest.State.UNDECIDED;
        boolean timeOver = held >= limit.asked();
        decide(i, soFar, held);
        if (!was || (timeOver && !timeSaid[i])) {
            timeSaid[i] = timeOver;
            said.accept(advice(i, soFar, held, false));
        }
    }

    private void decide(int i, Recognised loss, double held) {
        if (states[i] != SequentialTest.State.UNDECIDED) {
            return;
        }
        LossLimit limit = limits.get(i);
        states[i] = SequentialTest.decide(loss.value(), doubt(limit, loss, held), limit.most());
        if (states[i] != SequentialTest.State.UNDECIDED) {
            decidedAfter[i] = held;
        }
    }

    /** Standard uncertainty of what the time asked for shows, seen from another time. */
    private double doubt(LossLimit limit, Recognised loss, double held) {
        double air = WARMING * (warming(held) - warming(limit.asked()));
        double half = (limit.asked() - held) / MINUTE / 2;
        double slowing = loss.value() * loss.value() * half / ABSOLUTE;
        double unseen = MINUTE * unseenStep / Math.sqrt(3) / (held - Losses.SETTLE);
        double own = loss.uncertainty();
        return Math.sqrt(own * own + air * air + slowing * slowing + unseen * unseen);
    }

    /**
     * What 1 psi that comes back adds to the slope since the circuits have settled, psi a minute.
     */
    private static double warming(double held) {
        double begin = Num.exp(-Losses.SETTLE / TAU);
        double end = Num.exp(-held / TAU);
        return MINUTE * (begin - end) / (held - Losses.SETTLE);
    }

    private LossAdvice advice(int i, Recognised loss, double held, boolean over) {
        LossLimit limit = limits.get(i);
        double seconds = held - Losses.SETTLE;
        double needed =
                SequentialTest.secondsNeeded(
                        loss.value() - limit.most(), doubt(limit, loss, held), seconds, LONGEST);
        boolean decided = states[i] != SequentialTest.State.UNDECIDED;
        double more = decided ? 0 : Math.max(1, needed - seconds);
        return new LossAdvice(limit, loss, states[i], held, decidedAfter[i], more, over);
    }

    /** Takes note of what was recognised: perhaps that a loss was measured to its end. */
    void closed(Recognised loss) {
        double held = loss.to() - loss.from() + Losses.SETTLE;
        for (int i = 0; i < limits.size(); i++) {
            if (isOf(limits.get(i).check(), loss.kind())) {
                decide(i, loss, held);
                LossAdvice last = advice(i, loss, held, true);
                if (ended.size() < MOST) {
                    ended.add(last);
                }
                said.accept(last);
            }
        }
        if (loss.kind().isLoss()) {
            forget();
        }
    }

    private boolean isLimited(Kind kind) {
        for (LossLimit limit : limits) {
            if (isOf(limit.check(), kind)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isOf(Check check, Kind kind) {
        return (check == Check.AIR_LOSS_APPLIED && kind == Kind.LOSS_APPLIED)
                || (check == Check.AIR_LOSS_RELEASED && kind == Kind.LOSS_RELEASED);
    }
}
