package org.fandown.vehicle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fandown.document.Fields;
import org.fandown.document.Names;
import org.fandown.document.Node;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;

/** Reads what one unit's map says of its air supply. */
final class AirSupplyReader {
    private static final Map<String, WarningDevice> WARNINGS = warnings();

    private final Fields unit;

    AirSupplyReader(Fields unit) {
        this.unit = unit;
    }

    AirSupply read() {
        Optional<SupplyKind> kind = unit.optionalChoice("supply", SupplyKind.values());
        List<Reservoir> reservoirs = reservoirs();
        Optional<Compressor> compressor =
                unit.optionalFields("compressor").map(AirSupplyReader::compressor);
        Optional<Governor> governor =
                unit.optionalFields("governor").map(AirSupplyReader::governor);
        Optional<WarningDevice> warning = unit.optionalChoice("low-air-warning", WARNINGS);
        return Guard.at(() -> new AirSupply(kind, reservoirs, compressor, governor, warning), unit);
    }

    /** Both {@code lamp-and-buzzer} and {@code lamp and buzzer} are understood. */
    private static Map<String, WarningDevice> warnings() {
        Map<String, WarningDevice> words = new LinkedHashMap<>();
        for (WarningDevice device : WarningDevice.values()) {
            words.put(Names.kebab(device), device);
            words.put(Names.kebab(device).replace('-', ' '), device);
        }
        return words;
    }

    private List<Reservoir> reservoirs() {
        List<Reservoir> reservoirs = new ArrayList<>();
        for (Node node : unit.optionalList("reservoirs")) {
            reservoirs.add(reservoir(Fields.of(node)));
        }
        return reservoirs;
    }

    private static Reservoir reservoir(Fields fields) {
        ReservoirRole role = fields.choice("role", ReservoirRole.values());
        Optional<Quantity> volume = fields.optionalQuantity("volume", Dimension.VOLUME);
        fields.end();
        return Guard.at(() -> new Reservoir(role, volume), fields);
    }

    private static Compressor compressor(Fields fields) {
        Optional<Quantity> displacement = fields.optionalQuantity("displacement", Dimension.VOLUME);
        OptionalDouble ratio = OptionalDouble.empty();
        if (fields.has("drive-ratio")) {
            ratio =
                    OptionalDouble.of(
                            fields.number(
                                    "drive-ratio",
                                    Compressor.LEAST_RATIO,
                                    Compressor.GREATEST_RATIO));
        }
        fields.end();
        OptionalDouble driveRatio = ratio;
        return Guard.at(() -> new Compressor(displacement, driveRatio), fields);
    }

    private static Governor governor(Fields fields) {
        Optional<Quantity> cutIn = fields.optionalQuantity("cut-in", Dimension.GAUGE_PRESSURE);
        Optional<Quantity> cutOut = fields.optionalQuantity("cut-out", Dimension.GAUGE_PRESSURE);
        fields.end();
        return Guard.at(() -> new Governor(cutIn, cutOut), fields);
    }
}
