package org.fandown.yard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.fandown.check.Check;
import org.fandown.evidence.Circumstances;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.Instruments;
import org.fandown.evidence.Observations;
import org.fandown.evidence.Reading;
import org.fandown.evidence.Sample;
import org.fandown.judgement.Judge;
import org.fandown.judgement.Measurement;
import org.fandown.rulebook.RulesInForce;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;

/**
 * A needle that falls evenly and is read to whole psi: what the judge makes of its readings, with
 * an exact clock and a limit in one minute.
 */
public final class Needle {
    private static final double HIGH = 100;
    private static final double SECONDS = 60;

    private static final Inspection EMPTY = Trial.inspection("XA", Trucks.TRUCK, "");
    private static final RulesInForce RULES =
            Packs.of(
                            Packs.rule(
                                    "xa.loss",
                                    "air-loss-applied",
                                    "'limit': {'at-most': '3 psi', 'per': '1 min'}"))
                    .inForce(EMPTY.place(), EMPTY.vehicle(), EMPTY.moment().toLocalDate());
    private static final Judge JUDGE = Judge.by(RULES);
    private static final Instruments WHOLE_PSI =
            new Instruments(Map.of(Dimension.GAUGE_PRESSURE, Quantity.of(1, Unit.PSI)));

    private Needle() {}

    /**
     * The loss in one minute, as the judge measures it.
     *
     * @param rate true loss (psi per minute)
     * @param phase where between two marks the needle starts (psi, 0 to 1)
     * @param times when it is read (s), rising
     */
    public static Measurement loss(double rate, double phase, double... times) {
        List<Sample> samples = new ArrayList<>();
        for (double time : times) {
            double mark = Math.floor(HIGH + phase - rate * time / SECONDS + 0.5);
            samples.add(new Sample(Quantity.of(time, Unit.SECOND), Quantity.of(mark, Unit.PSI)));
        }
        return JUDGE.judge(inspection(samples)).findings().get(0).measured().orElseThrow();
    }

    /** Times from zero, evenly apart. */
    public static double[] even(int readings, double last) {
        double[] times = new double[readings];
        for (int i = 0; i < readings; i++) {
            times[i] = last * i / (readings - 1);
        }
        return times;
    }

    private static Inspection inspection(List<Sample> samples) {
        Check check = Check.AIR_LOSS_APPLIED;
        return new Inspection(
                EMPTY.place(),
                EMPTY.moment(),
                EMPTY.vehicle(),
                EMPTY.report(),
                WHOLE_PSI,
                true,
                Observations.of(
                        Map.of(check, new Reading.Span(check, samples, Circumstances.NONE, ""))),
                List.of(),
                false);
    }
}
