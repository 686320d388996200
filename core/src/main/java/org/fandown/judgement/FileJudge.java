package org.fandown.judgement;

import java.util.List;
import java.util.Optional;
import org.fandown.evidence.Circumstances;
import org.fandown.rulebook.EvidenceDemand;
import org.fandown.rulebook.Fit;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Ruling;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.fandown.vehicle.Axle;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.Side;
import org.fandown.vehicle.VehicleUnit;
import org.fandown.vehicle.WheelEnd;
import org.fandown.vehicle.WheelId;

/**
 * Judges what follows from the vehicle file alone: ends of an axle that differ, reservoir volume.
 */
final class FileJudge {
    private FileJudge() {}

    static void axles(Case before, Ruling ruling, List<Finding> findings) {
        Limit.AxlePart part = ((Limit.SameAcross) ruling.limit()).part();
        for (WheelId left : ruling.wheels()) {
            if (left.side() == Side.LEFT) {
                Optional<Finding> finding =
                        axle(ruling, part, before.vehicle().axle(left.axle()), left);
                if (finding.isPresent()) {
                    Fit fit = ruling.rule().applies().wheelFit(before.vehicle(), left);
                    findings.add(
                            fit.answer() == Fit.Answer.UNKNOWN
                                    ? WheelJudge.unknownFit(ruling, fit).at(left)
                                    : finding.get());
                }
            }
        }
    }

    private static Optional<Finding> axle(
            Ruling ruling, Limit.AxlePart part, Axle axle, WheelId at) {
        if (!isKnown(part, axle.left()) || !isKnown(part, axle.right())) {
            return unsaid(ruling, "the " + part.title() + " at both ends of axle " + at.axle())
                    .map(f -> f.at(at));
        }
        boolean same = part == Limit.AxlePart.CHAMBER ? sameSize(axle) : sameArm(axle);
        return Optional.of(
                Finding.at(
                        at,
                        ruling,
                        same ? Status.MET : Status.NOT_MET,
                        Why.of(
                                () ->
                                        "Axle "
                                                + at.axle()
                                                + ": "
                                                + part.title()
                                                + " left "
                                                + text(part, axle.left())
                                                + ", right "
                                                + text(part, axle.right())
                                                + "."
                                                + (same
                                                        ? ""
                                                        : Demanded.sentence(
                                                                ruling.rule().words())))));
    }

    /** What the file leaves out, where the place asks for it. */
    private static Optional<Finding> unsaid(Ruling ruling, String what) {
        if (ruling.rule().weight().evidence() != EvidenceDemand.ASKED) {
            return Optional.empty();
        }
        return Optional.of(
                Finding.of(
                        ruling,
                        Status.NOT_CHECKED,
                        Why.of(
                                () -> "The vehicle file does not give " + what + ".",
                                () -> "Add it to the vehicle file.")));
    }

    private static boolean isKnown(Limit.AxlePart part, WheelEnd end) {
        return part == Limit.AxlePart.CHAMBER ? end.chamber().isPresent() : end.arm().isPresent();
    }

    /** The rules ask for one size; they name neither the stroke nor its marks. */
    private static boolean sameSize(Axle axle) {
        Chamber left = axle.left().chamber().orElseThrow();
        Chamber right = axle.right().chamber().orElseThrow();
        return left.sameSizeAs(right);
    }

    /** Arms noted in unlike units are alike if they are so as printed. */
    private static boolean sameArm(Axle axle) {
        Quantity left = axle.left().arm().orElseThrow();
        Quantity right = axle.right().arm().orElseThrow();
        return left.equals(right) || left.print(Unit.MM).equals(right.print(Unit.MM));
    }

    private static String text(Limit.AxlePart part, WheelEnd end) {
        return part == Limit.AxlePart.CHAMBER
                ? end.chamber().orElseThrow().text()
                : end.arm().orElseThrow().print(Unit.MM);
    }

    static void reservoirs(Case before, Ruling ruling, List<Finding> findings) {
        List<VehicleUnit> units =
                ruling.rule().check() == org.fandown.check.Check.TRAILER_RESERVOIR_VOLUME
                        ? before.vehicle().trailers()
                        : List.of(before.vehicle().powerUnit());
        for (VehicleUnit unit : units) {
            reservoirs(before, ruling, unit).ifPresent(findings::add);
        }
    }

    private static Optional<Finding> reservoirs(Case before, Ruling ruling, VehicleUnit unit) {
        Optional<Double> percent = before.groundwork().reservoirPercent(unit);
        if (percent.isEmpty()) {
            return unsaid(ruling, "the volume of each reservoir and chamber of unit " + unit.id());
        }
        Measurement measured = new Measurement(percent.get(), Unit.PERCENT, 0);
        Bounds bounds = Bounds.in(before, Unit.PERCENT, Circumstances.NONE);
        return Optional.of(NumericJudge.compare(ruling, measured, bounds));
    }
}
