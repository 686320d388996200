package org.fandown.browser;

import java.util.ArrayList;
import java.util.List;
import org.fandown.document.Json;
import org.fandown.document.Names;
import org.fandown.document.Tree;
import org.fandown.evidence.StatementReader;
import org.fandown.evidence.VehicleSource;
import org.fandown.practice.OperatorAction;
import org.fandown.practice.PracticeEvent;
import org.fandown.practice.PracticeTruck;
import org.fandown.practice.Run;
import org.fandown.practice.RunDocument;
import org.fandown.practice.RunWriter;
import org.fandown.practice.Scenario;
import org.fandown.practice.ScenarioReader;
import org.fandown.practice.Script;
import org.fandown.practice.ScriptReader;
import org.fandown.practice.ScriptRun;
import org.fandown.practice.Signal;
import org.fandown.practice.Sound;
import org.fandown.practice.Verb;
import org.fandown.units.GaugePressure;
import org.teavm.jso.JSExport;

/** A practice truck that a page holds on to. Numbers come as one array a frame. */
public final class Truck {
    /** Longest time one call lets pass, s; a page that slept does not catch up hours. */
    private static final double MOST_SECONDS = 3600;

    private final PracticeTruck truck;
    private final List<Signal> signals;
    private final List<String> volumes;
    private final double[] frame;

    /**
     * Makes the truck of a scenario, as it is found.
     *
     * @param scenario the scenario file as JSON, its vehicle written out
     */
    @JSExport
    public Truck(String scenario) {
        Scenario read = new ScenarioReader(VehicleSource.NONE).read(Bridge.json(scenario));
        truck = PracticeTruck.of(read);
        signals = Signal.of(truck);
        volumes = new ArrayList<>(truck.air().volumes());
        frame = new double[signals.size() + volumes.size()];
    }

    /** What the numbers of a frame are: a list of {@code name} and {@code unit}, as JSON. */
    @JSExport
    public String names() {
        Tree.ListBuilder list = Tree.list();
        for (Signal signal : signals) {
            list.add(Tree.map().put("name", signal.name()).put("unit", signal.unit()));
        }
        for (String volume : volumes) {
            list.add(Tree.map().put("name", "in " + volume).put("unit", "psi"));
        }
        return Json.writeCompact(list.build());
    }

    /** The numbers now, in the order of {@link #names}; the array is used again. */
    @JSExport
    public double[] frame() {
        int at = 0;
        for (Signal signal : signals) {
            frame[at++] = signal.value(truck);
        }
        for (String volume : volumes) {
            frame[at++] = truck.air().find(volume).map(GaugePressure::inPsi).orElse(0.0);
        }
        return frame;
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
        return truck.act(new OperatorAction(known, value)).orElse("");
    }

    /** Lets time pass, in whole ticks of 0.02 s, at most an hour. */
    @JSExport
    public void advance(double seconds) {
        truck.advance(Math.min(MOST_SECONDS, Math.max(0, seconds)));
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
