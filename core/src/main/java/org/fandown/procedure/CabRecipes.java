package org.fandown.procedure;

import java.util.Optional;
import org.fandown.check.Check;

/** How the checks in the cab are made. */
final class CabRecipes {
    private static final String WATCH = "Keep your eyes on both needles";
    private static final String SPRINGS_MOVE =
            "Spring brakes come on by themselves: nobody near push rods and slack adjusters.";

    private final Rig rig;
    private final boolean tows;
    private final int cutIn;
    private final int cutOut;

    CabRecipes(Rig rig) {
        this.rig = rig;
        tows = rig.tows();
        cutIn = rig.durations().cutIn();
        cutOut = rig.durations().cutOut();
    }

    Optional<Recipe> find(Check check) {
        return Optional.ofNullable(
                switch (check) {
                    case BUILD_UP -> buildUp();
                    case GOVERNOR_CUT_OUT -> cutOut();
                    case GOVERNOR_CUT_IN -> cutIn();
                    case LOW_AIR_WARNING -> lowAir();
                    case PARKING_VALVE_CLOSING -> parkingValve();
                    case TRAILER_SUPPLY_CLOSING -> trailerSupply();
                    case AIR_LOSS_RELEASED -> lossReleased();
                    case AIR_LOSS_APPLIED -> lossApplied();
                    case CHECK_VALVE -> checkValve();
                    case PRESSURE_BEFORE_DRIVING -> beforeDriving();
                    case ABS_LAMP, TRAILER_ABS_LAMP -> lamp(check);
                    default -> null;
                });
    }

    private Recipe buildUp() {
        return new Recipe(Check.BUILD_UP, "Time the build-up")
                .seconds(5)
                .lookFor(WATCH + " and the clock; hold the engine speed.")
                .engineOn("only a running engine builds up")
                .need(
                        Need.is(
                                Aspect.COMPRESSOR,
                                1,
                                Weight.POSSIBLE,
                                "the compressor rests until" + " the pressure is down to cut-in"))
                .change(Change.Kind.RISE, cutOut);
    }

    private Recipe cutOut() {
        return new Recipe(Check.GOVERNOR_CUT_OUT, "Let the governor cut out and read the pressure")
                .seconds(10)
                .lookFor("The needles stop and the dryer purges; read both.")
                .engineOn("only a running engine builds up")
                .need(
                        Need.is(
                                Aspect.COMPRESSOR,
                                1,
                                Weight.SPOILS,
                                "the compressor rests already,"
                                        + " so at which pressure it cut out is not seen"))
                .need(
                        Need.atMost(
                                cutOut - 5,
                                Weight.SPOILS,
                                "the needles have to be seen rising" + " to the cut-out"))
                .change(Change.Kind.RISE, cutOut);
    }

    private Recipe cutIn() {
        return new Recipe(
                        Check.GOVERNOR_CUT_IN,
                        "Pump the pedal slowly until the compressor cuts in, and read the pressure")
                .seconds(20)
                .lookFor("The needles stop falling and begin to climb; pause between applications.")
                .engineOn("with the engine off nothing shows that the governor has cut in")
                .need(
                        Need.is(
                                Aspect.COMPRESSOR,
                                0,
                                Weight.SPOILS,
                                "the compressor pumps already:"
                                        + " at which pressure it cut in is not seen, only cut-out and a new"
                                        + " pump-down show it"))
                .need(
                        Need.atLeast(
                                cutIn + 1,
                                Weight.SPOILS,
                                "below the cut-in floor the governor" + " check is void"))
                .change(Change.Kind.FALL, cutIn);
    }

    private Recipe lowAir() {
        return new Recipe(
                        Check.LOW_AIR_WARNING, "Pump the pedal until the low-air warning comes on")
                .seconds(5)
                .lookFor(
                        "Read the lower needle when lamp or buzzer comes on; note which of the two"
                                + " worked.")
                .need(
                        Need.is(
                                Aspect.KEY,
                                1,
                                Weight.SPOILS,
                                "with the key off the warning has no" + " current"))
                .engineOff("a running engine pumps against you")
                .need(
                        Need.atLeast(
                                75,
                                Weight.SPOILS,
                                "it has to be seen to come on, so it must be"
                                        + " off at the start"))
                .change(Change.Kind.FALL, 60);
    }

    private Recipe parkingValve() {
        return new Recipe(
                        Check.PARKING_VALVE_CLOSING,
                        "Pump the pedal until the parking knob pops out, and read the pressure")
                .seconds(5)
                .lookFor("Read the higher needle when the parking knob comes out.")
                .caution(SPRINGS_MOVE)
                .engineOff(
                        "a running engine fights the spring-brake check: it refills while you"
                                + " pump")
                .released("a knob that is out already cannot pop out")
                .need(Need.atLeast(45, Weight.SPOILS, "the knob can have closed before you look"))
                .change(Change.Kind.FALL, Course.PARKING_POPS - 1)
                .leaves(Aspect.PARKING, 0)
                .leaves(Aspect.TRAILER_SUPPLY, 0);
    }

    private Recipe trailerSupply() {
        return new Recipe(
                        Check.TRAILER_SUPPLY_CLOSING,
                        "Pump the pedal until the trailer supply knob pops out, and read the"
                                + " pressure")
                .seconds(5)
                .lookFor("Read the higher needle when the trailer supply knob comes out.")
                .caution(SPRINGS_MOVE)
                .engineOff("a running engine refills while you pump")
                .trailerOn(true, "a knob that is out already cannot pop out")
                .need(Need.atLeast(50, Weight.SPOILS, "the knob can have closed before you look"))
                .change(Change.Kind.FALL, Course.SUPPLY_POPS - 1)
                .leaves(Aspect.TRAILER_SUPPLY, 0);
    }

    private Recipe loss(Check check, String action) {
        return new Recipe(check, action)
                .seconds(75)
                .engineOff("a running compressor hides the loss")
                .released(
                        "set parking brakes shut their own air off, and add to the service"
                                + " brakes")
                .trailerOn(tows, "the trailer's air is not in the test")
                .need(
                        Need.is(
                                Aspect.REST,
                                1,
                                Weight.SPOILS,
                                "after a fast fill the air cools for"
                                        + " a while and the needle falls without a leak"))
                .need(
                        Need.atLeast(
                                Math.min(cutIn, 90),
                                Weight.SPOILS,
                                "a leak is measured at" + " working pressure"))
                .needIf(
                        rig.hasSupplyReservoir(),
                        Need.is(
                                Aspect.SUPPLY_RESERVOIR,
                                1,
                                Weight.SPOILS,
                                "with the supply"
                                        + " reservoir drained only a part of the system is tested"));
    }

    private Recipe lossReleased() {
        return loss(Check.AIR_LOSS_RELEASED, "Time the air loss with the brakes released")
                .lookFor("Foot off the pedal. Read both needles at the start and after the time.");
    }

    private Recipe lossApplied() {
        return loss(Check.AIR_LOSS_APPLIED, "Time the air loss with the pedal held down")
                .lookFor(
                        "Press the pedal to the floor, let the first drop pass, then time. Do not"
                                + " move your foot.")
                .caution("Push rods move: nobody near them.")
                .change(Change.Kind.APPLICATION, 0);
    }

    private Recipe checkValve() {
        return new Recipe(Check.CHECK_VALVE, "See that primary and secondary keep their air")
                .seconds(60)
                .lookFor("With the supply reservoir empty neither needle may fall.")
                .engineOff("a running compressor fills what would be lost")
                .need(
                        Need.is(
                                Aspect.SUPPLY_RESERVOIR,
                                0,
                                Weight.SPOILS,
                                "only with the supply"
                                        + " reservoir drained has the check valve anything to hold"))
                .need(Need.atLeast(60, Weight.SPOILS, "without pressure nothing can be lost"));
    }

    private Recipe beforeDriving() {
        return new Recipe(Check.PRESSURE_BEFORE_DRIVING, "Read both circuits before you drive")
                .seconds(5)
                .lookFor("Both needles, and no warning on.")
                .engineOn("it is read just before driving")
                .need(
                        Need.atLeast(
                                Math.min(100, cutIn),
                                Weight.SPOILS,
                                "the circuits have to be" + " full"));
    }

    private Recipe lamp(Check check) {
        boolean trailer = check == Check.TRAILER_ABS_LAMP;
        return new Recipe(
                        check,
                        "Turn the key off and on and watch the "
                                + (trailer ? "trailer " : "")
                                + "ABS lamp")
                .seconds(8)
                .lookFor("It lights, and goes out after a few seconds.")
                .engineOff("turning the key off would stop the engine")
                .leaves(Aspect.KEY, 1);
    }
}
