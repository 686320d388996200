package org.fandown.referee;

import java.util.Optional;
import org.fandown.practice.Dash;
import org.fandown.practice.Inside;
import org.fandown.practice.PracticeTruck;
import org.fandown.practice.RunEntry;
import org.fandown.practice.RunWatcher;
import org.fandown.practice.Station;
import org.fandown.practice.Verb;
import org.fandown.procedure.Aspect;
import org.fandown.procedure.Lines;
import org.fandown.procedure.Situation;
import org.fandown.procedure.Spot;

/** Looks on while a run is replayed, and writes down what really happened. */
final class Witness implements RunWatcher {
    /** Pressure above which a towed unit has air, psi. */
    private static final double CHARGED = 40;

    /** Pressure below which the supply reservoir is drained, psi. */
    private static final double DRAINED = 10;

    private static final double FLOOR = 0.9;
    private static final double RELEASED = 0.02;
    private static final double MOVES = 0.01;

    private final Tale tale = new Tale();
    private final Stirring stirring;
    private int lines = Lines.COUPLED;
    private boolean pumped;
    private boolean ran;
    private boolean warned;
    private boolean first = true;
    private Optional<Boolean> parkingIn = Optional.empty();
    private Optional<Boolean> trailerIn = Optional.empty();

    /** A witness who takes the air for settled after a time without quick changes, s. */
    Witness(double settling) {
        stirring = new Stirring(settling);
    }

    Tale tale() {
        return tale;
    }

    @Override
    public void tick(PracticeTruck truck) {
        Inside inside = Inside.of(truck);
        Dash dash = truck.dash();
        long tick = truck.ticks();
        if (tick % NeedleTrack.EVERY == 0) {
            tale.needles.add(dash.primary(), dash.secondary());
        }
        stirring.look(truck, inside);
        signs(tick, dash, inside, truck.engineRuns());
        scene(truck, dash, inside);
        tale.ticks = tick;
    }

    @Override
    public void after(PracticeTruck truck, RunEntry entry, boolean refused) {
        if (entry instanceof RunEntry.Act act) {
            if (!refused) {
                couple(act.action().verb());
            }
            Inside inside = Inside.of(truck);
            Dash dash = truck.dash();
            signs(truck.ticks(), dash, inside, truck.engineRuns());
            scene(truck, dash, inside);
            Scene scene = tale.scenes.get(tale.scenes.size() - 1);
            tale.deeds.add(new Tale.Deed(act, refused, truck.seen(), scene));
        }
    }

    private void couple(Verb verb) {
        lines =
                switch (verb) {
                    case COUPLE_LINES, CROSS_LINES -> Lines.COUPLED;
                    case PART_LINES -> Lines.BOTH_PARTED;
                    case PART_SUPPLY_LINE -> lines | Lines.SUPPLY_PARTED;
                    case PART_CONTROL_LINE -> lines | Lines.SERVICE_PARTED;
                    default -> lines;
                };
    }

    private void signs(long tick, Dash dash, Inside inside, boolean runs) {
        boolean warns = dash.lowAirLamp() || dash.lowAirBuzzer();
        if (!first) {
            sign(tick, pumped && !inside.compressorPumps() && runs, Sign.Kind.CUT_OUT);
            boolean turned = runs && ran;
            sign(tick, !pumped && inside.compressorPumps() && turned, Sign.Kind.CUT_IN);
            sign(tick, warns && !warned, Sign.Kind.WARNING);
            sign(tick, popped(parkingIn, dash.parkingKnobIn()), Sign.Kind.PARKING_OUT);
            sign(tick, popped(trailerIn, dash.trailerKnobIn()), Sign.Kind.TRAILER_OUT);
        }
        first = false;
        warned = warns;
        pumped = inside.compressorPumps();
        ran = runs;
        parkingIn = dash.parkingKnobIn();
        trailerIn = dash.trailerKnobIn();
    }

    private static boolean popped(Optional<Boolean> before, Optional<Boolean> now) {
        return before.orElse(false) && !now.orElse(true);
    }

    private void sign(long tick, boolean shows, Sign.Kind kind) {
        if (shows) {
            tale.signs.add(new Sign(tick, kind));
        }
    }

    private void scene(PracticeTruck truck, Dash dash, Inside inside) {
        double foot = truck.footBrake();
        int pedal = foot >= FLOOR ? Scene.FLOOR : foot <= RELEASED ? Scene.RELEASED : 1;
        Scene now =
                new Scene(
                        truck.ticks(),
                        state(truck, dash, inside),
                        pedal,
                        truck.handValve() > RELEASED,
                        truck.station(),
                        truck.helperInCab(),
                        Math.abs(dash.metresPerSecond()) > MOVES);
        int last = tale.scenes.size() - 1;
        if (last < 0 || !tale.scenes.get(last).isLike(now)) {
            tale.scenes.add(now);
        }
    }

    private Situation state(PracticeTruck truck, Dash dash, Inside inside) {
        return new Situation(0)
                .with(Aspect.KEY, one(dash.keyOn()))
                .with(Aspect.ENGINE, one(truck.engineRuns()))
                .with(Aspect.PARKING, one(inside.parkingReleased()))
                .with(Aspect.TRAILER_SUPPLY, one(dash.trailerKnobIn().orElse(false)))
                .with(Aspect.LINES, lines)
                .with(Aspect.CHOCKS, one(!truck.chocked().isEmpty()))
                .with(Aspect.TRAILER_AIR, one(inside.towedPsi() >= CHARGED))
                .with(Aspect.COMPRESSOR, one(inside.compressorPumps()))
                .with(Aspect.REST, one(stirring.isSettled()))
                .with(Aspect.SUPPLY_RESERVOIR, one(inside.supplyPsi() >= DRAINED))
                .at(spot(truck.station()));
    }

    private static Spot spot(Station station) {
        return switch (station.spot()) {
            case CAB -> Spot.CAB;
            case WHEEL -> Spot.WHEEL;
            case COUPLING -> Spot.COUPLING;
            case RESERVOIRS -> Spot.RESERVOIRS;
            case REAR -> Spot.REAR;
            case FRONT -> Spot.GROUND;
        };
    }

    private static int one(boolean yes) {
        return yes ? 1 : 0;
    }
}
