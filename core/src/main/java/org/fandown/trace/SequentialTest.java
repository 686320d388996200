package org.fandown.trace;

import org.fandown.units.Num;

/**
 * A test that may be looked at as often as one likes while it goes on, and says as soon as it can
 * that a value is below a limit or above it.
 *
 * <p>It is a mixture of the sequential probability ratio tests of A. Wald (1945): not one other
 * value is weighed against the limit, but all, by a normal law around the limit. As the ratio of
 * the likelihoods is a martingale if the truth is the limit itself, it passes 1 / {@value #RISK}
 * with a probability of at most {@value #RISK} however often one looks (J. Ville 1939; H. Robbins
 * 1970). Half of that falls to either side: a truth at the limit or beyond is said to be within
 * with a probability of at most half the risk.
 *
 * <p><i>Assumes:</i> the estimate is normal with its standard uncertainty. What does not average
 * out with time, such as a drift, makes the test slower and not less sure if it is part of the
 * uncertainty.
 */
public final class SequentialTest {
    /** Probability of a wrong word where the truth is the limit itself, both sides together. */
    public static final double RISK = 0.05;

    /** Standard deviation of the values that are weighed against the limit, psi a minute. */
    static final double SPREAD = 2;

    private static final double LOG_RISK = -Num.log(RISK);

    /** What is known. */
    public enum State {
        /** Not yet on which side of the limit the truth lies. */
        UNDECIDED,
        /** The truth lies below the limit. */
        WITHIN,
        /** The truth lies above the limit. */
        OVER
    }

    private SequentialTest() {}

    /**
     * Returns the logarithm of the likelihood of all other values, weighed, over that of the limit.
     *
     * @param off the estimate less the limit
     * @param uncertainty standard uncertainty of the estimate, above 0
     */
    static double logRatio(double off, double uncertainty) {
        double own = uncertainty * uncertainty;
        double all = own + SPREAD * SPREAD;
        return off * off * SPREAD * SPREAD / (2 * own * all) - Num.log(all / own) / 2;
    }

    /**
     * Returns how far from the limit an estimate must be to decide.
     *
     * @param uncertainty standard uncertainty of the estimate, above 0
     */
    static double boundary(double uncertainty) {
        double own = uncertainty * uncertainty;
        double all = own + SPREAD * SPREAD;
        double needed = 2 * LOG_RISK + Num.log(all / own);
        return uncertainty * Math.sqrt(all / (SPREAD * SPREAD) * needed);
    }

    /**
     * Decides, if that can be.
     *
     * @param estimate the estimate so far
     * @param uncertainty its standard uncertainty, above 0
     * @param limit the limit
     */
    static State decide(double estimate, double uncertainty, double limit) {
        double off = estimate - limit;
        if (logRatio(off, uncertainty) < LOG_RISK) {
            return State.UNDECIDED;
        }
        return off < 0 ? State.WITHIN : State.OVER;
    }

    /**
     * Returns how long the whole test will have to be, if the estimate stays as it is and its
     * uncertainty falls as the time grows. With independent errors it falls faster.
     *
     * @param off the estimate less the limit
     * @param uncertainty its standard uncertainty now, above 0
     * @param seconds how long the test has been so far
     * @param most the longest that is of use
     * @return seconds, NaN if that would be more than the longest
     */
    static double secondsNeeded(double off, double uncertainty, double seconds, double most) {
        double distance = Math.abs(off);
        if (boundary(uncertainty * seconds / most) > distance) {
            return Double.NaN;
        }
        double low = Math.min(seconds, most);
        double high = most;
        while (high - low > 0.5) {
            double middle = (low + high) / 2;
            if (boundary(uncertainty * seconds / middle) > distance) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
