package org.fandown.procedure;

import java.util.ArrayList;
import java.util.List;
import org.fandown.check.Check;
import org.fandown.check.Component;
import org.fandown.vehicle.WheelId;

/** How a check is made wherever no rule says otherwise; filled in step by step. */
final class Recipe {
    private static final int TENTHS = 10;

    final Check check;
    final String action;
    final List<Need> needs = new ArrayList<>();
    final List<CheckStep.Leaves> leaves = new ArrayList<>();
    String lookFor = "";
    String caution = "";
    Spot spot = Spot.CAB;
    Change change = Change.NONE;
    int tenths;
    int hold;
    int rpm;
    boolean helper;
    List<WheelId> wheels = List.of();
    List<Component> parts = List.of();

    Recipe(Check check, String action) {
        this.check = check;
        this.action = action;
    }

    Recipe seconds(int seconds) {
        tenths = TENTHS * seconds;
        return this;
    }

    Recipe at(Spot where) {
        spot = where;
        return this;
    }

    Recipe lookFor(String text) {
        lookFor = text;
        return this;
    }

    Recipe caution(String text) {
        caution = text;
        return this;
    }

    Recipe need(Need need) {
        needs.add(need);
        return this;
    }

    Recipe needIf(boolean asked, Need need) {
        return asked ? need(need) : this;
    }

    Recipe change(Change.Kind kind, int psi) {
        change = new Change(kind, psi);
        return this;
    }

    Recipe leaves(Aspect aspect, int value) {
        leaves.add(new CheckStep.Leaves(aspect, value));
        return this;
    }

    Recipe engineOff(String why) {
        return need(Need.is(Aspect.ENGINE, 0, Weight.SPOILS, why));
    }

    Recipe engineOn(String why) {
        return need(Need.is(Aspect.ENGINE, 1, Weight.POSSIBLE, why));
    }

    Recipe released(String why) {
        return need(Need.is(Aspect.PARKING, 1, Weight.SPOILS, why));
    }

    Recipe parked(String why) {
        return need(Need.is(Aspect.PARKING, 0, Weight.SPOILS, why));
    }

    Recipe chocked(String why) {
        return need(Need.is(Aspect.CHOCKS, 1, Weight.SAFETY, why));
    }

    Recipe unchocked() {
        String why = "chocks hold the vehicle whatever the brakes do";
        return need(Need.is(Aspect.CHOCKS, 0, Weight.SPOILS, why));
    }

    Recipe trailerOn(boolean tows, String why) {
        return needIf(tows, Need.is(Aspect.TRAILER_SUPPLY, 1, Weight.SPOILS, why))
                .needIf(tows, Need.is(Aspect.TRAILER_AIR, 1, Weight.SPOILS, why))
                .linesCoupled(tows);
    }

    Recipe supplyFilled(String why) {
        return need(Need.is(Aspect.SUPPLY_RESERVOIR, 1, Weight.SPOILS, why));
    }

    Recipe linesCoupled(boolean tows) {
        String why = "with a line parted the trailer's part is not in the test";
        return needIf(tows, Need.is(Aspect.LINES, Lines.COUPLED, Weight.SPOILS, why));
    }
}
