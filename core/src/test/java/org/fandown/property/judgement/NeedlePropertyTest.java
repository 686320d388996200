package org.fandown.property.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.fandown.judgement.Measurement;
import org.fandown.yard.Needle;

class NeedlePropertyTest {
    private static final double ROUNDING = 1e-9;

    @Property
    void needle_that_falls_evenly_keeps_its_true_loss_inside_the_stated_interval(
            @ForAll @DoubleRange(min = 0, max = 15) double rate,
            @ForAll @DoubleRange(min = 0, max = 1) double phase,
            @ForAll("times") double[] times) {
        Measurement loss = Needle.loss(rate, phase, times);

        assertThat(rate).isBetween(loss.low() - ROUNDING, loss.high() + ROUNDING);
    }

    /** Three readings or more over two minutes, however unevenly apart. */
    @Provide
    Arbitrary<double[]> times() {
        return Arbitraries.integers()
                .between(0, 1200)
                .set()
                .ofMinSize(3)
                .ofMaxSize(40)
                .map(List::copyOf)
                .map(
                        tenths -> {
                            double[] times =
                                    tenths.stream().mapToDouble(tenth -> tenth / 10.0).toArray();
                            Arrays.sort(times);
                            return times;
                        });
    }
}
