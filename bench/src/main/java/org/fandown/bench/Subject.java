package org.fandown.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.fandown.app.files.RulePacks;
import org.fandown.check.PlaceCode;
import org.fandown.document.Json;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.InspectionReader;
import org.fandown.evidence.VehicleSource;
import org.fandown.judgement.Judge;
import org.fandown.rulebook.Rulebook;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * The inspection the benchmarks work on: a tractor with a semi-trailer, ten strokes and every
 * reading a driver takes in the cab, at one place. It is judged fit to move at each place, so that
 * no rule is left out of the work.
 */
@State(Scope.Benchmark)
@SuppressWarnings("NullAway.Init") // The harness calls prepare before anything else.
public class Subject {
    private static final String FILE = "tractor-trailer.json";
    private static final String PLACE_IN_FILE = "\"CA-ON\"";

    /** The place whose rules hold: one with rather few rules, and the one with most. */
    @Param({"CA-ON", "US"})
    public String place;

    private String json;
    private Rulebook rulebook;
    private Inspection inspection;
    private Judge judge;

    /** Reads the inspection and finds the rules, outside the time that is taken. */
    @Setup
    public void prepare() {
        json = text().replace(PLACE_IN_FILE, '"' + place + '"');
        rulebook = RulePacks.builtIn().rulebookFor(new PlaceCode(place)).orElseThrow();
        inspection = new InspectionReader(VehicleSource.NONE).read(Json.read(FILE, json));
        judge = judgeFor(inspection);
    }

    /** A judge by the rules of the inspection's place, vehicle and day. */
    Judge judgeFor(Inspection of) {
        return Judge.by(rulebook.inForce(of.place(), of.vehicle(), of.moment().toLocalDate()));
    }

    String json() {
        return json;
    }

    Inspection inspection() {
        return inspection;
    }

    Judge judge() {
        return judge;
    }

    private static String text() {
        try (InputStream in = Subject.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("The inspection " + FILE + " is missing.");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot read " + FILE, e);
        }
    }
}
