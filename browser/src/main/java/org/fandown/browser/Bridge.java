package org.fandown.browser;

import java.time.LocalDate;
import java.util.List;
import org.fandown.check.Check;
import org.fandown.check.Component;
import org.fandown.check.PlaceCode;
import org.fandown.document.DocumentException;
import org.fandown.document.Json;
import org.fandown.document.Names;
import org.fandown.document.Node;
import org.fandown.document.Position;
import org.fandown.document.ScalarNode;
import org.fandown.document.Tree;
import org.fandown.document.Values;
import org.fandown.evidence.Inspection;
import org.fandown.evidence.InspectionReader;
import org.fandown.evidence.VehicleSource;
import org.fandown.judgement.Judge;
import org.fandown.judgement.Judgement;
import org.fandown.practice.FaultFit;
import org.fandown.practice.FaultsDocument;
import org.fandown.practice.Run;
import org.fandown.practice.RunReader;
import org.fandown.procedure.Plan;
import org.fandown.procedure.PlanDocument;
import org.fandown.procedure.PlanRequest;
import org.fandown.procedure.Planner;
import org.fandown.procedure.Scope;
import org.fandown.record.JudgementDocument;
import org.fandown.record.MeasuredStrokes;
import org.fandown.record.RulesDocument;
import org.fandown.referee.MarksDocument;
import org.fandown.referee.Referee;
import org.fandown.referee.Sheet;
import org.fandown.rulebook.RulesInForce;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleReader;
import org.teavm.jso.JSExport;
import org.teavm.jso.JSExportClasses;

/**
 * The functions a page can call that need no truck. Documents are JSON texts of the forms in
 * docs/formats.md. What cannot be used raises an error whose message says what is wrong, what is
 * allowed and what to do.
 */
@JSExportClasses({Truck.class, Log.class})
public final class Bridge {
    private static final PlaceShelf PLACES = new PlaceShelf();

    private Bridge() {}

    /** Puts the rule pack of a place on the shelf; it is read when it is first needed. */
    @JSExport
    public static void addPack(String place, String json) {
        PLACES.add(new PlaceCode(place), json);
    }

    /** The rules in force: a document {@code fandown-rules/1}. */
    @JSExport
    public static String rules(String place, String vehicle, String day) {
        return Json.writeCompact(RulesDocument.of(inForce(place, vehicle(vehicle), day)));
    }

    /**
     * The quickest plan: a document {@code fandown-plan/1}.
     *
     * @param psi pressure the vehicle is found with, psi
     * @param thorough whether every check a person can make is planned
     */
    @JSExport
    public static String plan(String place, String vehicle, String day, int psi, boolean thorough) {
        Scope scope = thorough ? Scope.THOROUGH : Scope.ASKED;
        return Json.writeCompact(PlanDocument.of(plan(place, vehicle(vehicle), day, psi, scope)));
    }

    static Plan plan(String place, Vehicle vehicle, String day, int psi, Scope scope) {
        return Planner.plan(inForce(place, vehicle, day), scope, request(psi))
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "No order makes all these checks. Next: take another place"
                                                + " or vehicle."));
    }

    /**
     * Findings and verdict of an inspection with its vehicle in it: {@code fandown-judgement/1}.
     */
    @JSExport
    public static String judge(String inspection) {
        Inspection read = inspection(inspection);
        Judgement judgement = Judge.judge(PLACES.rulebookFor(read.place()), read);
        return Json.writeCompact(JudgementDocument.of(judgement, MeasuredStrokes.estimate(read)));
    }

    /**
     * The marks of a run by the rules of a place: a document {@code fandown-marks/1}.
     *
     * @param run a document {@code fandown-run/1}
     */
    @JSExport
    public static String mark(String run, String place, String day) {
        Run read = RunReader.read(json(run));
        RulesInForce rules = inForce(place, read.scenario().vehicle(), day);
        return Json.writeCompact(MarksDocument.of(Referee.mark(read, rules, Sheet.OURS)));
    }

    /** The faults a vehicle can have: a document {@code fandown-faults/1}. */
    @JSExport
    public static String faults(String vehicle) {
        return Json.writeCompact(FaultsDocument.of(FaultFit.of(vehicle(vehicle))));
    }

    /** Every check: list of {@code id}, {@code title}, {@code kind}, {@code dimension}. */
    @JSExport
    public static String checks() {
        Tree.ListBuilder list = Tree.list();
        for (Check check : Check.values()) {
            Tree.MapBuilder map =
                    Tree.map()
                            .put("id", check.id())
                            .put("title", check.title())
                            .put("kind", Names.kebab(check.kind()));
            check.dimension().ifPresent(d -> map.put("dimension", Names.kebab(d)));
            list.add(map);
        }
        return Json.writeCompact(list.build());
    }

    /** The ids of all parts that are looked at, and the wheels that have a push rod. */
    @JSExport
    public static String parts(String vehicle) {
        Tree.ListBuilder parts = Tree.list();
        for (Component part : Component.values()) {
            parts.add(part.id());
        }
        Tree.ListBuilder wheels = Tree.list();
        vehicle(vehicle).wheelsWithPushRod().forEach(wheel -> wheels.add(wheel.toString()));
        return Json.writeCompact(Tree.map().put("parts", parts).put("wheels", wheels).build());
    }

    private static PlanRequest request(int psi) {
        return new PlanRequest(psi, PlanRequest.Goal.QUICKEST, List.of());
    }

    /** Lines and columns of a text that nobody has seen would only puzzle. */
    private static Inspection inspection(String text) {
        try {
            return new InspectionReader(VehicleSource.NONE).read(json(text));
        } catch (DocumentException e) {
            throw new DocumentException(
                    Position.NONE, e.path(), e.value(), e.problem(), e.allowed(), e.nextStep());
        }
    }

    private static RulesInForce inForce(String place, Vehicle vehicle, String day) {
        PlaceCode at = new PlaceCode(place);
        return PLACES.rulebookFor(at).inForce(at, vehicle, date(day));
    }

    /** LocalDate.parse would bring zones, calendars and languages of the whole world along. */
    private static LocalDate date(String day) {
        return Values.date(new ScalarNode(day, ScalarNode.Kind.TEXT, Position.NONE, "day"));
    }

    private static Vehicle vehicle(String text) {
        return VehicleReader.read(json(text));
    }

    static Node json(String text) {
        return Json.read("", text);
    }
}
