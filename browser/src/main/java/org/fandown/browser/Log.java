package org.fandown.browser;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.document.Json;
import org.fandown.document.Names;
import org.fandown.document.Tree;
import org.fandown.evidence.Observations;
import org.fandown.evidence.ObservationsDocument;
import org.fandown.plot.Curve;
import org.fandown.plot.LongCurve;
import org.fandown.trace.CandumpReader;
import org.fandown.trace.Channel;
import org.fandown.trace.Recognised;
import org.fandown.trace.TraceDocument;
import org.fandown.trace.TraceLog;
import org.fandown.trace.TraceReadings;
import org.teavm.jso.JSExport;

/** A pressure log that a page reads, piece by piece, as {@code fandown trace} does. */
public final class Log {
    private final String name;
    private final TraceLog log;
    private final Map<Channel, LongCurve> curves = new EnumMap<>(Channel.class);

    /**
     * Makes a reader.
     *
     * @param name the name of the file, for refusals
     */
    @JSExport
    public Log(String name) {
        this.name = name;
        log = new TraceLog(name, CandumpReader.Times.AS_WRITTEN, this::sample);
    }

    private void sample(Channel channel, double seconds, double value) {
        if (Math.abs(value) < Double.POSITIVE_INFINITY) {
            curves.computeIfAbsent(channel, c -> new LongCurve()).add(seconds, value);
        }
    }

    /** Takes the next bytes of the file. */
    @JSExport
    public void accept(byte[] bytes) {
        log.accept(bytes, 0, bytes.length);
    }

    /**
     * Ends the file, and tells what it shows.
     *
     * @return {@code trace}: a document {@code fandown-trace/1}; {@code readings}: the readings for
     *     an inspection; {@code used}: from which stretch of time each was taken; as JSON
     */
    @JSExport
    public String finish() {
        log.finish();
        log.requirePressure();
        TraceReadings readings = TraceReadings.of(log.recognised());
        Tree.ListBuilder used = Tree.list();
        readings.used().forEach((check, found) -> used.add(stretch(check, found)));
        return Json.writeCompact(
                ObservationsDocument.add(
                                Tree.map()
                                        .put("trace", TraceDocument.of(log, name, Optional.empty()))
                                        .put("used", used),
                                Observations.of(readings.readings(log.instruments())))
                        .build());
    }

    private static Tree.MapBuilder stretch(Check check, Recognised found) {
        return Tree.map()
                .put("check", check.id())
                .put("title", check.title())
                .put("from", found.from(), 2)
                .put("to", found.to(), 2);
    }

    /** The names of what was sampled, as JSON. */
    @JSExport
    public String channels() {
        Tree.ListBuilder list = Tree.list();
        for (Channel channel : curves.keySet()) {
            list.add(Tree.map().put("id", Names.kebab(channel)).put("title", channel.title()));
        }
        return Json.writeCompact(list.build());
    }

    /**
     * What was sampled, thinned so that it can be drawn: seconds and value in turn.
     *
     * @param id a name of {@link #channels}
     */
    @JSExport
    public double[] curve(String id) {
        for (Map.Entry<Channel, LongCurve> entry : curves.entrySet()) {
            if (Names.kebab(entry.getKey()).equals(id)) {
                return numbers(entry.getValue().curve(id));
            }
        }
        return new double[0];
    }

    private static double[] numbers(Curve curve) {
        double[] numbers = new double[2 * curve.size()];
        for (int i = 0; i < curve.size(); i++) {
            numbers[2 * i] = curve.time(i);
            numbers[2 * i + 1] = curve.value(i);
        }
        return numbers;
    }
}
