package org.fandown.app.property;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.fandown.app.files.DocumentText;
import org.fandown.app.files.RulePacks;
import org.fandown.check.PlaceCode;
import org.fandown.document.Node;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.InspectionReader;
import org.fandown.judgement.Judge;
import org.fandown.judgement.Judgement;
import org.fandown.practice.Scenario;
import org.fandown.practice.ScenarioReader;
import org.fandown.practice.Script;
import org.fandown.practice.ScriptReader;
import org.fandown.rulebook.Rulebook;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleReader;

/** The example files in memory, and the rulebooks to judge them by. */
final class Examples {
    private static final Path FOLDER = Path.of("..", "examples");
    private static final RulePacks PACKS = RulePacks.builtIn();
    private static final Map<PlaceCode, Optional<Rulebook>> BOOKS = new TreeMap<>();

    static final Map<String, String> VEHICLES = texts("vehicles");
    static final Map<String, String> INSPECTIONS = texts("inspections");
    static final Map<String, String> SCENARIOS = texts("scenarios");
    static final Map<String, String> SCRIPTS = texts("scripts");
    private static final Map<String, Node> READ = new TreeMap<>();
    static final List<PlaceCode> PLACES = PACKS.places();

    private Examples() {}

    /** Reads an inspection whose vehicle is one of the examples. */
    static Inspection read(Node document) {
        return new InspectionReader(Examples::vehicle).read(document);
    }

    static Inspection read(String text) {
        return read(DocumentText.yaml("inspection.yaml", text));
    }

    /** Reads a scenario whose vehicle is one of the examples. */
    static Scenario scenario(Node document) {
        return new ScenarioReader(Examples::vehicle).read(document);
    }

    /** Reads a script for the tractor and trailer of the examples. */
    static Script script(Node document) {
        Vehicle vehicle = VehicleReader.read(vehicle("tractor-box-trailer"));
        return new ScriptReader(vehicle).read(document);
    }

    static Inspection example(String name) {
        return read(INSPECTIONS.get(name));
    }

    /** Judges by the rules of the place; empty if nobody has rules for it. */
    static Optional<Judgement> judge(Inspection inspection) {
        return book(inspection.place()).map(book -> Judge.judge(book, inspection));
    }

    /** The rulebook of a place that has rules. */
    static Rulebook rulebook(PlaceCode place) {
        return book(place).orElseThrow();
    }

    private static synchronized Optional<Rulebook> book(PlaceCode place) {
        return BOOKS.computeIfAbsent(place, PACKS::rulebookFor);
    }

    static synchronized Node vehicle(String name) {
        String key = name.replace("../vehicles/", "").replace(".yaml", "");
        if (!VEHICLES.containsKey(key)) {
            throw new IllegalArgumentException("there is no such example");
        }
        return READ.computeIfAbsent(key, k -> DocumentText.yaml("vehicle.yaml", VEHICLES.get(k)));
    }

    private static Map<String, String> texts(String folder) {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.list(FOLDER.resolve(folder))) {
            for (Path file : files.toList()) {
                texts.put(
                        file.getFileName().toString().replace(".yaml", ""), Files.readString(file));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return texts;
    }
}
