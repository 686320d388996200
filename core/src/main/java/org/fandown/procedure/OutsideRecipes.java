package org.fandown.procedure;

import java.util.Optional;
import org.fandown.check.Check;

/** How the checks outside the cab are made. */
final class OutsideRecipes {
    private static final String UNDER = "nobody goes under a vehicle whose wheels are not chocked";
    private static final String RODS =
            "Keep hands clear of push rods and slack adjusters while brakes apply. Never open a"
                    + " spring-brake chamber; an automatic adjuster out of limit is a fault, not a"
                    + " thing to turn.";

    private final Rig rig;
    private final boolean tows;

    OutsideRecipes(Rig rig) {
        this.rig = rig;
        tows = rig.tows();
    }

    Optional<Recipe> find(Check check) {
        return Optional.ofNullable(
                switch (check) {
                    case WALK_ROUND -> walkRound();
                    case NO_AUDIBLE_LEAK -> listen();
                    case PUSHROD_APPLIED_STROKE -> appliedStroke();
                    case PUSHROD_FREE_STROKE -> freeStroke();
                    case ADJUSTER_HAND_PLAY, ADJUSTERS_CHECKED -> byHand(check);
                    case RESERVOIR_DRAIN -> drain();
                    case SERVICE_LINE_TIGHT, TRACTOR_PROTECTION_FITTED -> serviceLine(check);
                    case SUPPLY_LINE_TIGHT -> supplyLine();
                    case TRACTOR_PROTECTION -> protection();
                    case TRAILER_BRAKES_APPLY -> trailerApplies();
                    case TRAILER_BRAKES_RELEASE -> trailerReleases();
                    case AIR_REACHES_TRAILERS -> airReaches();
                    case STOP_LAMPS -> stopLamps();
                    case EXHAUST_VALVES -> exhausts();
                    default -> null;
                });
    }

    private int around(int secondsEach, int count) {
        return rig.durations().round() / 10 + secondsEach * count;
    }

    private Recipe walkRound() {
        return new Recipe(Check.WALK_ROUND, "Walk round the vehicle and look at its parts")
                .at(Spot.GROUND)
                .seconds(around(0, 0))
                .lookFor(
                        "Each part on the list; linings, drums, hoses, chambers, lines, couplings.")
                .caution("Look from beside the wheels, not from between them.")
                .chocked("chock before you walk round");
    }

    private Recipe listen() {
        return new Recipe(Check.NO_AUDIBLE_LEAK, "Walk round and listen for leaks")
                .at(Spot.GROUND)
                .seconds(around(4, rig.vehicle().axleCount()))
                .lookFor("No hiss anywhere: chambers, valves, lines, glad hands, reservoirs.")
                .chocked("chock before you walk round")
                .engineOff("a running engine drowns a leak")
                .trailerOn(tows, "the trailer's leaks are not heard without air in it")
                .supplyFilled("a drained reservoir cannot leak, and its open drain can be heard")
                .need(Need.atLeast(90, Weight.SPOILS, "a leak is heard at working pressure"));
    }

    private Recipe strokes(Check check, String action, int seconds) {
        Recipe recipe = new Recipe(check, action);
        recipe.wheels = rig.pushRods();
        return recipe.at(Spot.GROUND)
                .seconds(around(seconds, recipe.wheels.size()))
                .caution(RODS)
                .chocked(UNDER)
                .released("a rod held out by its spring brake does not show its travel")
                .trailerOn(tows, "the trailer's spring brakes hold its rods out");
    }

    private Recipe appliedStroke() {
        Recipe recipe =
                strokes(
                                Check.PUSHROD_APPLIED_STROKE,
                                "Measure each push rod released and with the pedal held down",
                                25)
                        .lookFor(
                                "Mark the rod at the chamber face with a thin line; applied less"
                                        + " released is the stroke.")
                        .engineOff("the pressure has to stay where it is")
                        .need(
                                Need.atLeast(
                                        90,
                                        Weight.SPOILS,
                                        "a stroke at low pressure is too" + " short"))
                        .change(Change.Kind.APPLICATION, 0);
        recipe.helper = true;
        return recipe;
    }

    private Recipe freeStroke() {
        return strokes(Check.PUSHROD_FREE_STROKE, "Pry each push rod out by a bar and measure", 25)
                .lookFor("From released until the linings touch.")
                .engineOff("nobody may start or brake while hands are at the rods")
                .need(
                        Need.atLeast(
                                90,
                                Weight.SPOILS,
                                "with too little air the spring brakes drag"
                                        + " and the free stroke reads short"));
    }

    private Recipe byHand(Check check) {
        return strokes(check, "Pull each slack adjuster by hand", 12)
                .lookFor("Movement, condition and wear; gloves on.")
                .engineOff("nobody may start or brake while hands are at the rods")
                .need(
                        Need.atLeast(
                                60,
                                Weight.SPOILS,
                                "with too little air the spring brakes" + " drag"));
    }

    private Recipe drain() {
        return new Recipe(Check.RESERVOIR_DRAIN, "Open and shut the drain of each reservoir")
                .at(Spot.RESERVOIRS)
                .seconds(15 * rig.reservoirs())
                .lookFor("Air, no water, no oil; each drain shuts again.")
                .caution("Eye and ear protection; stand beside the drain, not below it.")
                .chocked(UNDER)
                .engineOff("drain with the engine off")
                .supplyFilled("a reservoir that was drained before shows nothing")
                .needIf(
                        tows,
                        Need.is(
                                Aspect.TRAILER_AIR,
                                1,
                                Weight.SPOILS,
                                "without air in the trailer nothing comes out there"))
                .need(Need.atLeast(20, Weight.SPOILS, "without pressure nothing comes out"))
                .change(Change.Kind.BLOW, 0);
    }

    private Recipe serviceLine(Check check) {
        return new Recipe(check, "Press the pedal with the service line parted and watch its end")
                .seconds(20)
                .lookFor("No air from the tractor's service line.")
                .caution("Hang the line where you can see it, away from faces.")
                .chocked("the brakes are worked with people at the lines")
                .need(
                        Need.is(
                                Aspect.LINES,
                                Lines.SERVICE_PARTED,
                                Weight.SPOILS,
                                "the end of the" + " service line has to be open"))
                .need(Need.atLeast(60, Weight.SPOILS, "without air nothing can leak"))
                .change(Change.Kind.APPLICATION, 0);
    }

    private Recipe supplyLine() {
        return new Recipe(Check.SUPPLY_LINE_TIGHT, "Listen at the trailer's parted supply line")
                .at(Spot.COUPLING)
                .seconds(15)
                .lookFor("No air comes back from the trailer.")
                .chocked("people stand between the units")
                .need(
                        Need.is(
                                Aspect.LINES,
                                Lines.SUPPLY_PARTED,
                                Weight.SPOILS,
                                "the end of the" + " supply line has to be open"))
                .need(
                        Need.is(
                                Aspect.TRAILER_AIR,
                                1,
                                Weight.SPOILS,
                                "an empty trailer loses" + " nothing"));
    }

    private Recipe protection() {
        return new Recipe(
                        Check.TRACTOR_PROTECTION,
                        "Push the trailer supply knob with the supply line parted, until it pops out")
                .seconds(25)
                .lookFor(
                        "Air escapes at the open line, then the valve shuts; the needles stay"
                                + " there.")
                .caution("The open hose blows and whips: nobody between the units, line end tied.")
                .chocked("the trailer's brakes are not under the driver's control")
                .engineOff("a running compressor hides what is kept")
                .need(
                        Need.is(
                                Aspect.LINES,
                                Lines.SUPPLY_PARTED,
                                Weight.SPOILS,
                                "only an open" + " supply line makes the protection work"))
                .need(Need.atLeast(65, Weight.SPOILS, "the knob does not stay in below"))
                .change(Change.Kind.ESCAPE, Course.SUPPLY_POPS - 1)
                .leaves(Aspect.TRAILER_SUPPLY, 0);
    }

    private Recipe trailerApplies() {
        return new Recipe(Check.TRAILER_BRAKES_APPLY, "See that the trailer's brakes are on")
                .at(Spot.REAR)
                .seconds(20)
                .lookFor("The trailer's push rods are out.")
                .caution(RODS)
                .chocked(UNDER)
                .need(
                        Need.is(
                                Aspect.TRAILER_SUPPLY,
                                0,
                                Weight.SPOILS,
                                "the trailer has to be" + " without supply"))
                .need(
                        Need.is(
                                Aspect.TRAILER_AIR,
                                1,
                                Weight.SPOILS,
                                "a trailer that never had air" + " shows nothing"));
    }

    private Recipe trailerReleases() {
        return new Recipe(Check.TRAILER_BRAKES_RELEASE, "See that the trailer's brakes are off")
                .at(Spot.REAR)
                .seconds(20)
                .lookFor("The trailer's push rods are in.")
                .caution(RODS)
                .chocked(UNDER)
                .trailerOn(true, "they release only with air");
    }

    private Recipe airReaches() {
        int trailers = Math.max(rig.vehicle().trailers().size(), 1);
        Recipe recipe =
                new Recipe(
                                Check.AIR_REACHES_TRAILERS,
                                "Open the shut-off valves at the rear, one after the other")
                        .at(Spot.REAR)
                        .seconds(40 * trailers)
                        .lookFor(
                                "Air from the supply line, and from the service line while the"
                                        + " hand valve is on.")
                        .caution("Eye and ear protection; dust flies. Shut both valves again.")
                        .chocked(UNDER)
                        .trailerOn(true, "without supply no air can come")
                        .need(Need.atLeast(90, Weight.SPOILS, "at normal pressure"))
                        .change(Change.Kind.APPLICATION, 0);
        recipe.helper = true;
        return recipe;
    }

    private Recipe stopLamps() {
        Recipe recipe =
                new Recipe(Check.STOP_LAMPS, "See the stop lamps while the pedal is pressed")
                        .at(Spot.REAR)
                        .seconds(10)
                        .lookFor("All stop lamps light and go out.")
                        .chocked("chock before you walk round")
                        .need(Need.is(Aspect.KEY, 1, Weight.SPOILS, "the lamps need the key"))
                        .need(Need.atLeast(60, Weight.SPOILS, "the switch needs pressure"))
                        .change(Change.Kind.APPLICATION, 0);
        recipe.helper = true;
        return recipe;
    }

    private Recipe exhausts() {
        Recipe recipe =
                new Recipe(Check.EXHAUST_VALVES, "Listen at the exhausts while the pedal is let go")
                        .at(Spot.GROUND)
                        .seconds(around(3, rig.vehicle().axleCount()))
                        .lookFor("Each valve vents quickly and then is silent.")
                        .caution(RODS)
                        .chocked(UNDER)
                        .engineOff("a running engine drowns it")
                        .trailerOn(tows, "the trailer's valves need air")
                        .need(Need.atLeast(60, Weight.SPOILS, "without pressure nothing vents"))
                        .change(Change.Kind.APPLICATION, 0);
        recipe.helper = true;
        return recipe;
    }
}
