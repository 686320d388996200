package org.fandown.procedure;

import java.util.Optional;
import org.fandown.check.Check;

/** How the checks are made in which the vehicle moves, or tries to. */
final class RollRecipes {
    private static final String READY =
            "Clear ground before and behind; belt on; foot ready at the brake.";

    private final boolean tows;

    RollRecipes(Rig rig) {
        tows = rig.tows();
    }

    Optional<Recipe> find(Check check) {
        return Optional.ofNullable(
                switch (check) {
                    case PARKING_BRAKE_HOLD -> parkingHold();
                    case PARKING_BRAKE_RELEASE -> parkingRelease();
                    case SERVICE_BRAKE_RESPONSE -> service();
                    case TRAILER_SERVICE_BRAKES -> handValve();
                    case TRAILER_BRAKES_HOLD, TRAILER_SPRING_BRAKES_APPLY, COUPLING_TUG ->
                            trailerTug(check);
                    default -> null;
                });
    }

    private static Recipe rolling(Check check, String action, int seconds) {
        return new Recipe(check, action)
                .seconds(seconds)
                .caution(READY)
                .unchocked()
                .engineOn("the engine has to pull")
                .need(
                        Need.atLeast(
                                90,
                                Weight.SAFETY,
                                "the service brakes must be able to stop the" + " vehicle"));
    }

    private Recipe parkingHold() {
        return rolling(Check.PARKING_BRAKE_HOLD, "Pull gently against the parking brakes", 15)
                .lookFor("The vehicle stays where it is.")
                .parked("it is the parking brakes that have to hold");
    }

    private Recipe parkingRelease() {
        return rolling(
                        Check.PARKING_BRAKE_RELEASE,
                        "Release the parking brakes and roll one turn of a wheel",
                        15)
                .lookFor("The wheels turn free.")
                .released("set brakes do not let the wheels turn")
                .trailerOn(tows, "the trailer's brakes hold it");
    }

    private Recipe service() {
        return rolling(Check.SERVICE_BRAKE_RESPONSE, "Roll at walking pace and press the pedal", 25)
                .lookFor("It stops evenly, without pull, odd feel or delay.")
                .released("the service brakes alone have to stop it")
                .trailerOn(tows, "the trailer's brakes hold it");
    }

    private Recipe handValve() {
        return rolling(
                        Check.TRAILER_SERVICE_BRAKES,
                        "Roll slowly and work the trailer hand valve",
                        20)
                .lookFor("The trailer's brakes are felt.")
                .released("the trailer's service brakes alone are meant")
                .trailerOn(tows, "without supply the trailer is braked anyway");
    }

    private Recipe trailerTug(Check check) {
        boolean coupling = check == Check.COUPLING_TUG;
        return rolling(
                        check,
                        coupling
                                ? "Look at the jaws, then pull gently against the trailer"
                                : "Pull gently against the trailer's brakes",
                        15)
                .lookFor(coupling ? "The coupling holds." : "The trailer holds.")
                .released("the tractor's own brakes must not help")
                .needIf(
                        tows,
                        Need.is(
                                Aspect.TRAILER_SUPPLY,
                                0,
                                Weight.SPOILS,
                                "the trailer's brakes come" + " on only without supply"))
                .needIf(
                        tows && !coupling,
                        Need.is(
                                Aspect.TRAILER_AIR,
                                1,
                                Weight.SPOILS,
                                "a trailer that never had air" + " shows nothing"));
    }
}
