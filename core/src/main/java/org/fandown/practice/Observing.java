package org.fandown.practice;

import static org.fandown.practice.Doing.DONE;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.check.Component;
import org.fandown.practice.PracticeEvent.Kind;
import org.fandown.units.Decimals;
import org.fandown.units.Fractions;
import org.fandown.units.Length;
import org.fandown.units.Num;
import org.fandown.units.Quantity;
import org.fandown.vehicle.WheelId;

/** What a person reads, sees, hears and measures; each becomes an event. */
final class Observing {
    private static final int SIXTEENTHS = 16;

    /** Pressure above which a bar cannot tell the free stroke, psi. */
    private static final double APPLIED = 3;

    private final PracticeTruck truck;

    Observing(PracticeTruck truck) {
        this.truck = truck;
    }

    void addTo(Map<Verb, Doing.Deed> deeds) {
        deeds.put(Verb.READ, this::read);
        deeds.put(Verb.LOOK, this::look);
        deeds.put(Verb.LISTEN, action -> note(heard()));
        deeds.put(Verb.MEASURE, this::measure);
        deeds.put(Verb.PRY, this::pry);
        deeds.put(Verb.NOTE, action -> note("noted: " + action.value()));
    }

    /** Whether the event of a verb is what was observed. */
    static boolean notesItself(Verb verb) {
        return switch (verb) {
            case READ, LOOK, LISTEN, MEASURE, PRY, NOTE -> true;
            default -> false;
        };
    }

    private Optional<String> note(String text) {
        truck.note(Kind.OBSERVED, text);
        return DONE;
    }

    private Optional<String> read(OperatorAction action) {
        Dash dash = truck.dash();
        if (action.is("gauges")) {
            return note(
                    "primary "
                            + Decimals.format(dash.primary().inPsi(), 0)
                            + " psi, secondary "
                            + Decimals.format(dash.secondary().inPsi(), 0)
                            + " psi, engine "
                            + Decimals.format(Num.round(dash.engine().inRpm() / 50) * 50, 0)
                            + " rpm");
        }
        List<String> lit = new ArrayList<>();
        addIf(lit, dash.lowAirLamp(), "low-air lamp");
        addIf(lit, dash.lowAirBuzzer(), "buzzer");
        addIf(lit, dash.absLamp().orElse(false), "ABS lamp");
        return note("on: " + (lit.isEmpty() ? "nothing" : String.join(", ", lit)));
    }

    private static void addIf(List<String> to, boolean on, String what) {
        if (on) {
            to.add(what);
        }
    }

    private Optional<String> look(OperatorAction action) {
        Component part = Argument.component(action.value()).orElseThrow();
        List<String> found = WalkRound.found(truck, part);
        truck.show(new Sighting.Part(part, found));
        return note(part.id() + ": " + (found.isEmpty() ? "in order" : String.join(", ", found)));
    }

    private String heard() {
        List<String> heard = new ArrayList<>();
        for (Sound sound : truck.sounds()) {
            String near = sound.from().equals(truck.station()) ? "here" : "from " + sound.from();
            heard.add("air " + near + " (" + sound.kind().name().replace('_', ' ') + ")");
        }
        return heard.isEmpty() ? "no air heard" : lower(String.join(", ", heard));
    }

    private static String lower(String text) {
        StringBuilder lower = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            lower.append(c >= 'A' && c <= 'Z' && !isSide(lower) ? (char) (c + 'a' - 'A') : c);
        }
        return lower.toString();
    }

    private static boolean isSide(StringBuilder before) {
        char last = before.length() == 0 ? ' ' : before.charAt(before.length() - 1);
        return last >= '0' && last <= '9';
    }

    private Optional<String> measure(OperatorAction action) {
        WheelId wheel = WheelId.parse(action.value());
        Optional<Length> stroke = truck.air().pushRod(wheel);
        if (stroke.isEmpty()) {
            return noPushRod(wheel);
        }
        requireChocks(wheel);
        String out = byRule(stroke.get());
        truck.show(new Sighting.Stroke(wheel, Quantity.parse(out)));
        return note("push rod of " + wheel + " is out " + out);
    }

    private Optional<String> pry(OperatorAction action) {
        WheelId wheel = WheelId.parse(action.value());
        Optional<Length> free = truck.air().freeStroke(wheel);
        if (free.isEmpty()) {
            return noPushRod(wheel);
        }
        requireChocks(wheel);
        double psi = truck.air().find(wheel + ".service").map(p -> p.inPsi()).orElse(0.0);
        double out = truck.air().pushRod(wheel).map(Length::inInches).orElse(0.0);
        if (psi > APPLIED || out > PracticeDefault.RULE_STEP.number()) {
            return Optional.of("the brake is applied; release it first");
        }
        String moves = byRule(free.get());
        truck.show(new Sighting.FreeStroke(wheel, Quantity.parse(moves)));
        return note("free stroke of " + wheel + " is " + moves);
    }

    private static Optional<String> noPushRod(WheelId wheel) {
        return Optional.of("wheel " + wheel + " has no push rod to measure");
    }

    private void requireChocks(WheelId wheel) {
        if (truck.motion.chocked().isEmpty()) {
            truck.note(
                    Kind.HAZARD,
                    "somebody reaches to the push rod of " + wheel + " and no wheel is chocked");
        }
    }

    /** As read on a rule, with the small error of a hand. */
    private String byRule(Length length) {
        double error = truck.dice.within(PracticeDefault.RULE_ERROR.number());
        double inches = Math.max(0, length.inInches() + error);
        return Fractions.mixed(inches, SIXTEENTHS) + " in";
    }
}
