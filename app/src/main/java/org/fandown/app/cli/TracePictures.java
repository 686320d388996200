package org.fandown.app.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fandown.plot.Curve;
import org.fandown.plot.LongCurve;
import org.fandown.plot.RollingCurve;
import org.fandown.plot.TraceView;
import org.fandown.plot.TraceView.Figure;
import org.fandown.plot.TraceView.Focus;
import org.fandown.plot.TraceView.Panel;
import org.fandown.plot.TraceView.Span;
import org.fandown.plot.TraceView.Strip;
import org.fandown.trace.Channel;
import org.fandown.trace.Recognised;
import org.fandown.trace.TraceLog;
import org.fandown.trace.TraceReadings;

/**
 * Gathers, while a log is read, what its pictures need: the whole of it coarsely, and the time
 * around each thing recognised as finely as it can be drawn.
 *
 * <p>What it keeps does not grow with the length of the log, but for the pictures of what was
 * recognised, and of these at most {@value #MOST}.
 */
final class TracePictures {
    /** So many pictures are kept, of what is judged first. */
    static final int MOST = 40;

    /** Time shown before and after, as a share of the time itself, and at least, s. */
    private static final double MARGIN = 0.15;

    private static final double LEAST_MARGIN = 6;

    private static final List<Channel> PRESSURES =
            List.of(Channel.PRIMARY, Channel.SECONDARY, Channel.SUPPLY);
    private static final List<Channel> PANELS =
            List.of(Channel.ENGINE_SPEED, Channel.PEDAL, Channel.APPLICATION, Channel.SPEED);
    private static final List<Channel> STRIPS =
            List.of(
                    Channel.BRAKE_SWITCH,
                    Channel.PARKING_SWITCH,
                    Channel.WARNING,
                    Channel.TRAILER_SHUT);

    private static final Set<Channel> DRAWN =
            Stream.of(PRESSURES, PANELS, STRIPS)
                    .flatMap(List::stream)
                    .collect(Collectors.toCollection(() -> EnumSet.noneOf(Channel.class)));

    /** Strips of time in a picture, of pressures and of other things. */
    private static final int FINE = 700;

    private static final int COARSE = 250;

    private final Map<Channel, LongCurve> whole = new EnumMap<>(Channel.class);
    private final Map<Channel, RollingCurve> recent = new EnumMap<>(Channel.class);
    private final Map<Recognised, Map<Channel, Curve>> pieces = new HashMap<>();
    private final List<Recognised> kept = new ArrayList<>();
    private final List<Recognised> waiting = new ArrayList<>();
    private double due = Double.POSITIVE_INFINITY;

    /** Takes a sample of the log. */
    void sample(Channel channel, double seconds, double value) {
        if (!DRAWN.contains(channel) || !Double.isFinite(value)) {
            return;
        }
        if (seconds > due) {
            cut(seconds);
        }
        whole.computeIfAbsent(channel, c -> new LongCurve()).add(seconds, value);
        recent.computeIfAbsent(channel, c -> new RollingCurve()).add(seconds, value);
    }

    /** Takes what was recognised; its picture is kept once the time after it is known too. */
    void recognised(Recognised found) {
        kept.add(found);
        if (kept.size() > MOST) {
            Recognised last = lastUnused();
            kept.remove(last);
            pieces.remove(last);
            waiting.remove(last);
            if (last.equals(found)) {
                return;
            }
        }
        waiting.add(found);
        due = Math.min(due, end(found));
    }

    /** Of what is kept, the last that is not judged so far. */
    private Recognised lastUnused() {
        Collection<Recognised> used = TraceReadings.of(kept).used().values();
        for (int i = kept.size() - 1; i > 0; i--) {
            if (!used.contains(kept.get(i))) {
                return kept.get(i);
            }
        }
        return kept.get(0);
    }

    private void cut(double now) {
        due = Double.POSITIVE_INFINITY;
        Iterator<Recognised> each = waiting.iterator();
        while (each.hasNext()) {
            Recognised found = each.next();
            if (end(found) < now) {
                Map<Channel, Curve> piece = new EnumMap<>(Channel.class);
                recent.forEach((channel, curve) -> piece.put(channel, part(channel, curve, found)));
                pieces.put(found, piece);
                each.remove();
            } else {
                due = Math.min(due, end(found));
            }
        }
    }

    private static Curve part(Channel channel, RollingCurve curve, Recognised found) {
        int strips = PRESSURES.contains(channel) ? FINE : COARSE;
        return curve.part(channel.title(), begin(found), end(found), strips);
    }

    /** Ends the log. */
    void finish() {
        cut(Double.POSITIVE_INFINITY);
        recent.clear();
    }

    private static double margin(Recognised found) {
        return Math.max(LEAST_MARGIN, MARGIN * (found.to() - found.from()));
    }

    private static double begin(Recognised found) {
        return Math.max(0, found.from() - margin(found));
    }

    private static double end(Recognised found) {
        return found.to() + margin(found);
    }

    /** The whole log, with everything recognised, numbered in the order given. */
    TraceView overview(TraceLog log, List<Recognised> inOrder) {
        Map<Channel, Curve> curves = new EnumMap<>(Channel.class);
        whole.forEach((channel, curve) -> curves.put(channel, curve.curve(channel.title())));
        double end = Math.max(1, log.seconds());
        return new TraceView(
                0,
                end,
                true,
                pressures(curves),
                panels(curves),
                strips(curves, true),
                spans(inOrder, 0, end),
                Figure.none(),
                new Focus(0, end));
    }

    /** One thing recognised; empty if its picture was not kept. */
    Optional<TraceView> detail(TraceLog log, Recognised found, List<Recognised> inOrder) {
        return Optional.ofNullable(pieces.get(found))
                .map(piece -> detail(log, found, inOrder, piece));
    }

    private TraceView detail(
            TraceLog log, Recognised found, List<Recognised> inOrder, Map<Channel, Curve> curves) {
        double from = begin(found);
        double to = Math.max(from + 1, Math.min(end(found), log.seconds()));
        boolean fine = found.kind().isLoss();
        return new TraceView(
                from,
                to,
                false,
                pressures(curves),
                panels(curves),
                strips(curves, false),
                spans(inOrder, from, to),
                TraceFigures.of(found, circuits(curves)),
                fine ? new Focus(found.from(), found.to()) : new Focus(from, to));
    }

    private static List<Span> spans(List<Recognised> inOrder, double from, double to) {
        List<Span> spans = new ArrayList<>();
        for (int i = 0; i < inOrder.size(); i++) {
            Recognised found = inOrder.get(i);
            if (found.to() >= from && found.from() <= to) {
                spans.add(new Span(i + 1, found.from(), found.to()));
            }
        }
        return spans;
    }

    private static List<Curve> circuits(Map<Channel, Curve> curves) {
        return Stream.of(Channel.PRIMARY, Channel.SECONDARY)
                .filter(curves::containsKey)
                .map(curves::get)
                .toList();
    }

    private static List<Curve> pressures(Map<Channel, Curve> curves) {
        return PRESSURES.stream().filter(curves::containsKey).map(curves::get).toList();
    }

    private List<Panel> panels(Map<Channel, Curve> curves) {
        List<Panel> panels = new ArrayList<>();
        for (Channel channel : PANELS) {
            Curve curve = curves.get(channel);
            LongCurve all = whole.get(channel);
            if (curve == null || all == null) {
                continue;
            }
            double top = all.highest();
            if (channel == Channel.ENGINE_SPEED || curve.highest() > 0) {
                panels.add(new Panel(TraceFigures.title(channel), curve, top));
            }
        }
        return panels;
    }

    private static List<Strip> strips(Map<Channel, Curve> curves, boolean all) {
        List<Strip> strips = new ArrayList<>();
        for (Channel channel : STRIPS) {
            Curve curve = curves.get(channel);
            if (curve != null && (all || curve.highest() > 0)) {
                strips.add(new Strip(TraceFigures.title(channel), curve));
            }
        }
        return strips;
    }
}
