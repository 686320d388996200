package org.fandown.vehicle;

import java.util.Optional;
import org.fandown.document.Fields;
import org.fandown.document.MapNode;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;

/** Reads one end of an axle: a key of the side's own map goes before the same key of the axle. */
final class EndReader {
    private final Fields axle;
    private final Optional<Fields> own;
    private final boolean air;
    private boolean unbraked;

    EndReader(Fields axle, Optional<Fields> own, boolean air) {
        this.axle = axle;
        this.own = own;
        this.air = air;
    }

    WheelEnd read() {
        BrakeKind brake = with("brake").choice("brake", BrakeKind.values());
        unbraked = brake == BrakeKind.NONE && own.isPresent() && own.get().has("brake");
        Optional<Chamber> chamber = chamber();
        boolean braked = brake != BrakeKind.NONE;
        Guard.check(() -> UnitRules.requireChamber(air, braked, chamber.isPresent()), places());
        boolean spring = springBrake(chamber.isPresent());
        Optional<Adjuster> adjuster =
                with("adjuster").optionalChoice("adjuster", Adjuster.values());
        Optional<Quantity> arm = length("arm");
        Optional<Lining> lining = with("lining").optionalChoice("lining", Lining.values());
        Optional<Quantity> drum = length("drum-radius");
        Optional<Quantity> tyre = length("tyre-radius");
        return Guard.at(
                () -> new WheelEnd(brake, chamber, spring, adjuster, arm, lining, drum, tyre),
                places());
    }

    /** A chamber needs the answer; without one there can be no spring brake. */
    private boolean springBrake(boolean chamber) {
        Fields place = with("spring-brake");
        return chamber
                ? place.truth("spring-brake")
                : place.optionalTruth("spring-brake").orElse(false);
    }

    private Optional<Chamber> chamber() {
        Fields place = with("chamber");
        if (!place.has("chamber")) {
            return Optional.empty();
        }
        if (place.node("chamber") instanceof MapNode) {
            return Optional.of(chamber(place.fields("chamber")));
        }
        String text = place.text("chamber");
        return Optional.of(Guard.on("chamber", () -> ChamberText.parse(text), place));
    }

    private static Chamber chamber(Fields fields) {
        Mount mount = fields.choice("mount", Mount.values());
        String type = fields.text("type");
        boolean longStroke = fields.optionalTruth("long-stroke").orElse(false);
        Optional<Quantity> rated = fields.optionalQuantity("rated-stroke", Dimension.LENGTH);
        Optional<Quantity> limit = fields.optionalQuantity("marked-limit", Dimension.LENGTH);
        fields.end();
        return Guard.at(() -> new Chamber(mount, type, longStroke, rated, limit), fields);
    }

    private Optional<Quantity> length(String key) {
        return with(key).optionalQuantity(key, Dimension.LENGTH);
    }

    /**
     * The map that speaks for a key. A side that says {@code brake: none} takes no part of a brake
     * over from its axle.
     */
    private Fields with(String key) {
        axle.has(key); // makes the key a known one, even if both sides go before it
        boolean inOwn = own.isPresent() && own.get().has(key);
        boolean alone = unbraked && !key.equals("tyre-radius");
        return own.isPresent() && (alone || inOwn) ? own.get() : axle;
    }

    private Fields[] places() {
        return own.isPresent() ? new Fields[] {own.get(), axle} : new Fields[] {axle};
    }
}
