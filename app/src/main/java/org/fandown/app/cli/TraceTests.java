package org.fandown.app.cli;

import java.util.List;
import java.util.function.Consumer;
import org.fandown.judgement.LossDemand;
import org.fandown.trace.LossAdvice;
import org.fandown.trace.LossAdvisor;
import org.fandown.trace.LossLimit;

/** The air-loss tests of a trace, held against the limits of the place while they go on. */
final class TraceTests {
    private final LossAdvisor advisor;
    private Consumer<LossAdvice> listener = advice -> {};

    TraceTests(List<LossDemand> demands) {
        advisor =
                new LossAdvisor(
                        demands.stream().map(TraceTests::limit).toList(),
                        advice -> listener.accept(advice));
    }

    private static LossLimit limit(LossDemand demand) {
        return new LossLimit(
                demand.ruling().rule().check(),
                demand.ruling().rule().id(),
                demand.ruling().limit().toString(),
                demand.most(),
                demand.seconds());
    }

    /** Tells at once what is new. */
    void listen(Consumer<LossAdvice> consumer) {
        listener = consumer;
    }

    LossAdvisor advisor() {
        return advisor;
    }

    List<LossAdvice> ended() {
        return advisor.ended();
    }
}
