package org.fandown.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.rulebook.Limit;
import org.fandown.rulebook.Ruling;
import org.fandown.units.Unit;
import org.fandown.vehicle.Axle;
import org.fandown.vehicle.Chamber;
import org.fandown.vehicle.Side;
import org.fandown.vehicle.VehicleUnit;
import org.fandown.vehicle.WheelId;

/**
 * Judges what follows from the vehicle file alone: ends of an axle that differ, reservoir volume.
 */
final class FileJudge {
    private FileJudge() {}

    static List<Finding> axles(Case before, Ruling ruling) {
        List<Finding> findings = new ArrayList<>();
        Limit.AxlePart part = ((Limit.SameAcross) ruling.limit()).part();
        for (WheelId wheel : ruling.wheels()) {
            if (wheel.side() == Side.LEFT) {
                axle(ruling, part, before.vehicle().axle(wheel.axle()), wheel.axle())
                        .ifPresent(f -> findings.add(f.at(wheel)));
            }
        }
        return findings;
    }

    private static Optional<Finding> axle(
            Ruling ruling, Limit.AxlePart part, Axle axle, int number) {
        Optional<String> left = text(part, axle, Side.LEFT);
        Optional<String> right = text(part, axle, Side.RIGHT);
        if (left.isEmpty() || right.isEmpty()) {
            return Optional.empty();
        }
        boolean same = part == Limit.AxlePart.CHAMBER ? sameSize(axle) : left.equals(right);
        return Optional.of(
                Finding.of(
                        ruling,
                        same ? Status.MET : Status.NOT_MET,
                        Why.of(
                                () ->
                                        "Axle "
                                                + number
                                                + ": "
                                                + part.title()
                                                + " left "
                                                + left.get()
                                                + ", right "
                                                + right.get()
                                                + "."
                                                + (same
                                                        ? ""
                                                        : Demanded.sentence(
                                                                ruling.rule().words())))));
    }

    /** The rules ask for one size; they name neither the stroke nor its marks. */
    private static boolean sameSize(Axle axle) {
        Chamber left = axle.left().chamber().orElseThrow();
        Chamber right = axle.right().chamber().orElseThrow();
        return left.sameSizeAs(right);
    }

    private static Optional<String> text(Limit.AxlePart part, Axle axle, Side side) {
        return part == Limit.AxlePart.CHAMBER
                ? axle.end(side).chamber().map(Chamber::text)
                : axle.end(side).arm().map(arm -> arm.print(Unit.MM));
    }

    static List<Finding> reservoirs(Case before, Ruling ruling) {
        List<Finding> findings = new ArrayList<>();
        List<VehicleUnit> units =
                ruling.rule().check() == org.fandown.check.Check.TRAILER_RESERVOIR_VOLUME
                        ? before.vehicle().trailers()
                        : List.of(before.vehicle().powerUnit());
        for (VehicleUnit unit : units) {
            ReservoirVolume.percentOfChambers(unit)
                    .ifPresent(
                            percent ->
                                    findings.add(
                                            NumericJudge.compare(
                                                    ruling,
                                                    new Measurement(percent, Unit.PERCENT, 0),
                                                    Bounds.in(
                                                            before,
                                                            Unit.PERCENT,
                                                            org.fandown.evidence.Circumstances
                                                                    .NONE))));
        }
        return findings;
    }
}
