package org.fandown.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.document.Json;
import org.fandown.document.Names;
import org.fandown.document.Node;
import org.fandown.document.Tree;
import org.fandown.evidence.StatementReader;
import org.fandown.evidence.VehicleSource;
import org.fandown.operator.Guide;
import org.fandown.practice.OperatorAction;
import org.fandown.practice.PracticeEvent;
import org.fandown.practice.PracticeTruck;
import org.fandown.practice.Replay;
import org.fandown.practice.Run;
import org.fandown.practice.RunDocument;
import org.fandown.practice.RunEntry;
import org.fandown.practice.RunReader;
import org.fandown.practice.RunWatcher;
import org.fandown.practice.RunWriter;
import org.fandown.practice.ScenarioReader;
import org.fandown.practice.Script;
import org.fandown.practice.ScriptReader;
import org.fandown.practice.ScriptRun;
import org.fandown.practice.Signal;
import org.fandown.practice.Sound;
import org.fandown.practice.Verb;
import org.fandown.procedure.Plan;
import org.fandown.procedure.PlanDocument;
import org.fandown.procedure.Scope;
import org.teavm.jso.JSExport;

/** A practice truck that a page holds on to. Numbers come as one array a frame. */
public final class Truck {
    /** Longest time one call lets pass, s; a page that slept does not catch up hours. */
    private static final double MOST_SECONDS = 3600;

    private final PracticeTruck truck;
    private final Optional<Replay> before;
    private final List<Signal> signals;
    private final InsideFrame inside;
    private final double[] frame;
    private final List<double[]> film = new ArrayList<>();
    private Optional<Guide> guide = Optional.empty();

    /**
     * Makes the truck of a scenario, as it is found; or that of a run, to be brought by {@link
     * #redo} to where it was left.
     *
     * @param document the scenario file as JSON, its vehicle written out, or {@code fandown-run/1}
     * @param isRun whether it is a run
     */
    @JSExport
    public Truck(String document, boolean isRun) {
        Node read = Bridge.json(document);
        before = isRun ? Optional.of(Replay.of(RunReader.read(read), told())) : Optional.empty();
        truck =
                before.map(Replay::truck)
                        .orElseGet(
                                () ->
                                        PracticeTruck.of(
                                                new ScenarioReader(VehicleSource.NONE).read(read)));
        signals = Signal.of(truck);
        inside = new InsideFrame(truck.air());
        frame = new double[signals.size() + inside.size()];
    }

    /** What the numbers of a frame are: a list of {@code name} and {@code unit}, as JSON. */
    @JSExport
    public String names() {
        Tree.ListBuilder list = Tree.list();
        for (Signal signal : signals) {
            list.add(Tree.map().put("name", signal.name()).put("unit", signal.unit()));
        }
        inside.addNames(list);
        return Json.writeCompact(list.build());
    }

    /** The numbers now, in the order of {@link #names}; the array is used again. */
    @JSExport
    public double[] frame() {
        int at = 0;
        for (Signal signal : signals) {
            frame[at++] = signal.value(truck);
        }
        inside.write(frame, at);
        return frame;
    }

    /**
     * How the air system is laid out, as JSON: {@code vessels}, a list of {@code name}, {@code
     * kind} ({@code reservoir}, {@code chamber}, {@code line}) and {@code pumped}, whether the
     * compressor pumps into it; {@code ways}, a list of {@code name}, {@code from}, {@code to},
     * {@code kind} ({@code plain}, {@code check}, {@code protection}, {@code lapping}) and {@code
     * pilots}, names of vessels whose pressure works it.
     */
    @JSExport
    public String network() {
        return Json.writeCompact(inside.document());
    }

    /**
     * Does something, in the words of a script.
     *
     * @return why it cannot be done, empty text if it was
     */
    @JSExport
    public String act(String verb, String value) {
        Verb known =
                Verb.byId(verb)
                        .orElseThrow(
                                () ->
                                        new IllegalArgumentException(
                                                "'" + verb + "' is nothing one can do."));
        Optional<String> refusal = truck.act(new OperatorAction(known, value));
        tell(refusal.isPresent());
        return refusal.orElse("");
    }

    /** Lets time pass, in whole ticks of 0.02 s, at most an hour. */
    @JSExport
    public void advance(double seconds) {
        truck.advance(Math.min(MOST_SECONDS, Math.max(0, seconds)));
        guide.ifPresent(it -> it.tick(truck));
    }

    /**
     * Does again what was done in the run, for so long.
     *
     * @return whether it stands where it was left
     */
    @JSExport
    public boolean redo(double seconds) {
        return before.map(replay -> replay.advance((long) Math.ceil(seconds / PracticeTruck.TICK)))
                .orElse(true);
    }

    /** Whether a run that was done again came out as it did, to the last bit. */
    @JSExport
    public boolean isSame() {
        return before.map(Replay::isSame).orElse(true);
    }

    /** Does what a script file (as JSON) says, without pause. */
    @JSExport
    public void perform(String script) {
        Script steps = new ScriptReader(truck.vehicle()).read(Bridge.json(script));
        new ScriptRun(truck, steps).perform(MOST_SECONDS, now -> {});
    }

    /**
     * Says something, in the words of a script.
     *
     * @param key {@code begin}, {@code record} or {@code conclude}
     * @param said what stands under the key, as JSON
     */
    @JSExport
    public void state(String key, String said) {
        truck.state(new StatementReader(truck.vehicle()).read(key, Bridge.json(said)));
        tell(false);
    }

    // ---- the guide

    /** Tells the guide what was done or said last. */
    private void tell(boolean refused) {
        List<RunEntry> log = truck.log();
        guide.ifPresent(it -> it.after(truck, log.get(log.size() - 1), refused));
    }

    /** Tells the guide what is done again. */
    private RunWatcher told() {
        return new RunWatcher() {
            @Override
            public void tick(PracticeTruck again) {
                guide.ifPresent(it -> it.tick(again));
            }

            @Override
            public void after(PracticeTruck again, RunEntry entry, boolean refused) {
                guide.ifPresent(it -> it.after(again, entry, refused));
            }
        };
    }

    /**
     * Lets a guide lead through the quickest plan; to be called before anything is done.
     *
     * @param psi pressure the vehicle is found with, psi
     * @return the plan: a document {@code fandown-plan/1}
     */
    @JSExport
    public String guide(String place, String day, int psi) {
        Plan plan = Bridge.plan(place, truck.vehicle(), day, psi, Scope.ASKED);
        guide = Optional.of(Guide.of(plan, truck));
        return Json.writeCompact(PlanDocument.of(plan));
    }

    /**
     * Where the guide is, as JSON: {@code at}, the number of the step that is next; {@code needs},
     * a list of {@code need}, {@code why}, {@code holds}; {@code open}, ids of the checks still to
     * be written down. Empty text without a guide.
     */
    @JSExport
    public String guided() {
        return guide.map(it -> Json.writeCompact(GuideDocument.of(it))).orElse("");
    }

    /** Goes on, or back, to the step with a number, whatever was done. */
    @JSExport
    public void guideTo(int number) {
        guide.ifPresent(it -> it.goTo(number));
    }

    /**
     * Lets the operator perform the next step of the guide.
     *
     * @param every how often its {@link #film} has a frame, s
     * @return what stood in the way, empty text if it was done
     */
    @JSExport
    public String show(double every) {
        film.clear();
        double[] last = {truck.time()};
        Runnable onlooker =
                () -> {
                    if (truck.time() - last[0] >= every - PracticeTruck.TICK / 2) {
                        last[0] = truck.time();
                        film.add(frame().clone());
                    }
                };
        return guide.orElseThrow(() -> new IllegalStateException("There is no guide."))
                .show(onlooker)
                .orElse("");
    }

    /** How many frames the step has that was shown last. */
    @JSExport
    public int filmed() {
        return film.size();
    }

    /** One frame of the step that was shown last, from 0. */
    @JSExport
    public double[] film(int number) {
        return film.get(number);
    }

    /** The run so far: a document {@code fandown-run/1}. */
    @JSExport
    public String run(String title) {
        return Json.writeCompact(RunWriter.write(Run.of(truck, title)));
    }

    /** Where the person stands, as a script writes it. */
    @JSExport
    public String station() {
        return truck.station().toString();
    }

    /** Whether somebody else sits in the cab. */
    @JSExport
    public boolean helper() {
        return truck.helperInCab();
    }

    /** How loud the loudest air is that escapes where the person stands; 1 is just heard. */
    @JSExport
    public double hiss() {
        double level = 0;
        for (Sound sound : truck.sounds()) {
            level = Math.max(level, sound.level());
        }
        return level;
    }

    /** How many things happened so far. */
    @JSExport
    public int eventCount() {
        return truck.events().size();
    }

    /** What happened from the given number on: list of seconds, kind, text, as JSON. */
    @JSExport
    public String events(int from) {
        List<PracticeEvent> all = truck.events();
        Tree.ListBuilder list = Tree.list();
        for (PracticeEvent event :
                all.subList(Math.max(0, Math.min(from, all.size())), all.size())) {
            list.add(
                    Tree.map()
                            .put("seconds", event.seconds())
                            .put("kind", Names.kebab(event.kind()))
                            .put("text", event.text()));
        }
        return Json.writeCompact(list.build());
    }

    /** 16 hexadecimal digits made of every bit of the run so far. */
    @JSExport
    public String fingerprint() {
        return RunDocument.hex(truck.fingerprint());
    }
}
