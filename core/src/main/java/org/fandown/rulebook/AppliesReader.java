package org.fandown.rulebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.check.Check;
import org.fandown.document.Fields;
import org.fandown.rulebook.Applies.Criterion;
import org.fandown.rulebook.Applies.WheelCriterion;
import org.fandown.units.Dimension;
import org.fandown.vehicle.BrakeKind;
import org.fandown.vehicle.BrakePower;
import org.fandown.vehicle.BuildStandard;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.Chassis;
import org.fandown.vehicle.Lining;
import org.fandown.vehicle.UnitKind;
import org.fandown.vehicle.Use;

/** Reads to which vehicles a rule applies. */
final class AppliesReader {
    private final Check check;
    private final List<Criterion> vehicle = new ArrayList<>();
    private final List<WheelCriterion> wheel = new ArrayList<>();

    private AppliesReader(Check check) {
        this.check = check;
    }

    static Applies read(Check check, Optional<Fields> fields) {
        AppliesReader reader = new AppliesReader(check);
        fields.ifPresent(reader::criteria);
        return new Applies(reader.vehicle, reader.wheel, CheckScope.atWheels(check));
    }

    private void criteria(Fields fields) {
        fields.optionalText("units").ifPresent(text -> vehicle.add(units(fields, text)));
        if (fields.has("kinds")) {
            vehicle.add(Criteria.kinds(kinds(fields)));
        }
        for (String token : fields.optionalTexts("has")) {
            vehicle.add(Features.criterion(fields, "has", token, true));
        }
        for (String token : fields.optionalTexts("lacks")) {
            vehicle.add(Features.criterion(fields, "lacks", token, false));
        }
        fields.optionalChoice("use", Use.values()).ifPresent(u -> vehicle.add(Criteria.use(u)));
        fields.optionalChoice("brakes", BrakePower.values())
                .ifPresent(b -> vehicle.add(Criteria.brakes(b)));
        fields.optionalChoice("standard", BuildStandard.values())
                .ifPresent(s -> vehicle.add(Criteria.standard(s, true)));
        fields.optionalChoice("not-standard", BuildStandard.values())
                .ifPresent(s -> vehicle.add(Criteria.standard(s, false)));
        if (fields.has("built")) {
            built(fields.fields("built"));
        }
        if (fields.has("mass")) {
            vehicle.add(Criteria.mass(EdgesReader.read(fields.fields("mass"), Dimension.MASS)));
        }
        if (fields.has("seats")) {
            vehicle.add(Criteria.seats(EdgesReader.read(fields.fields("seats"), Dimension.COUNT)));
        }
        fields.optionalChoice("chassis", Chassis.values())
                .ifPresent(c -> vehicle.add(Criteria.chassis(c)));
        wheelCriteria(fields);
        fields.end();
    }

    private void wheelCriteria(Fields fields) {
        boolean perWheel = Resolution.isPerWheel(check);
        for (String key : List.of("axle", "brake", "chamber", "lining")) {
            if (fields.has(key) && !perWheel) {
                throw fields.refuse(
                        key,
                        "is about one wheel, but the check is not",
                        "a check made at each wheel",
                        "Remove it.");
            }
        }
        fields.optionalChoice("axle", Which.values())
                .ifPresent(a -> wheel.add(WheelCriteria.steerAxle(a == Which.STEER)));
        fields.optionalChoice("brake", BrakeKind.values())
                .ifPresent(b -> wheel.add(WheelCriteria.brake(b)));
        fields.optionalChoice("lining", Lining.values())
                .ifPresent(l -> wheel.add(WheelCriteria.lining(l)));
        if (fields.has("chamber")) {
            wheel.add(WheelCriteria.chamber(chamber(fields)));
        }
    }

    /** The kinds of the powered unit; a towed one is named by {@code has}. */
    private static List<UnitKind> kinds(Fields fields) {
        List<UnitKind> kinds = fields.choices("kinds", UnitKind.values());
        if (kinds.isEmpty() || !kinds.stream().allMatch(UnitKind::isPowered)) {
            throw fields.refuse(
                    "kinds",
                    kinds.isEmpty()
                            ? "names no kind"
                            : "names a towed vehicle, but is about the powered one",
                    "truck, tractor, bus",
                    "Write has: [trailer] or has: [dolly] for what is towed.");
        }
        return kinds;
    }

    private static Chamber chamber(Fields fields) {
        String[] words = fields.text("chamber").split(" ", -1);
        boolean longStroke = words.length == 3 && words[2].equals("long");
        if (!words[0].equals("clamp") || words.length > (longStroke ? 3 : 2) || words.length < 2) {
            throw fields.refuse(
                    "chamber",
                    "is not a chamber",
                    "clamp 30, clamp 30 long",
                    "Write one of these forms.");
        }
        try {
            return Chamber.of(org.fandown.vehicle.Mount.CLAMP, words[1], longStroke);
        } catch (IllegalArgumentException e) {
            throw fields.refuse(
                    "chamber", "is not a chamber", "a type that exists", "Correct the type.");
        }
    }

    private static Criterion units(Fields fields, String text) {
        boolean orMore = text.endsWith("+");
        String digit = orMore ? text.substring(0, text.length() - 1) : text;
        if (!List.of("1", "2", "3").contains(digit)) {
            throw fields.refuse(
                    "units", "is not a number of units", "1, 2, 3, 2+, 3+", "Write one of these.");
        }
        int count = digit.charAt(0) - '0';
        return Criteria.vehicles(count, orMore ? Integer.MAX_VALUE : count);
    }

    private void built(Fields fields) {
        Optional<LocalDate> from = fields.optionalDate("from");
        Optional<LocalDate> before = fields.optionalDate("before");
        boolean trailers = fields.optionalChoice("of", Of.values()).isPresent();
        fields.end();
        if (from.isEmpty() && before.isEmpty()) {
            throw fields.refuseHere(
                    "names no day", "from, before or both", "Add the day, or remove built.");
        }
        if (from.isPresent() && before.isPresent() && !before.get().isAfter(from.get())) {
            throw fields.refuse(
                    "before",
                    "is not after from, so that no vehicle is meant",
                    "a later day",
                    "Correct one of the two days.");
        }
        if (trailers) {
            vehicle.add(Criteria.trailersBuilt(from, before));
        } else if (Resolution.isPerWheel(check)) {
            wheel.add(WheelCriteria.wheelUnitBuilt(from, before));
        } else {
            vehicle.add(Criteria.built(from, before));
        }
    }

    private enum Which {
        STEER,
        NOT_STEER
    }

    private enum Of {
        TRAILER
    }
}
