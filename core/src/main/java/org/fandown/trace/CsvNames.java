package org.fandown.trace;

import java.util.List;
import java.util.Optional;
import org.fandown.units.Unit;

/** The names that columns of a table may have, and what they mean. */
final class CsvNames {
    /**
     * A name of a channel.
     *
     * @param text the name in small letters
     * @param channel what the column holds
     * @param inverted whether it holds the opposite, as a knob that is in
     */
    record Name(String text, Channel channel, boolean inverted) {}

    /** Of several columns for one channel the one named first here is taken. */
    private static final List<Name> NAMES =
            List.of(
                    name("primary", Channel.PRIMARY),
                    name("primary reservoir", Channel.PRIMARY),
                    name("primary needle", Channel.PRIMARY),
                    name("secondary", Channel.SECONDARY),
                    name("secondary reservoir", Channel.SECONDARY),
                    name("secondary needle", Channel.SECONDARY),
                    name("supply", Channel.SUPPLY),
                    name("supply reservoir", Channel.SUPPLY),
                    name("park line", Channel.PARKING),
                    name("parking", Channel.PARKING),
                    name("application", Channel.APPLICATION),
                    name("engine", Channel.ENGINE_SPEED),
                    name("engine speed", Channel.ENGINE_SPEED),
                    name("speed", Channel.SPEED),
                    name("pedal", Channel.PEDAL),
                    name("foot brake", Channel.PEDAL),
                    name("brake switch", Channel.BRAKE_SWITCH),
                    name("parking switch", Channel.PARKING_SWITCH),
                    new Name("parking knob in", Channel.PARKING_SWITCH, true),
                    name("low-air warning", Channel.WARNING),
                    name("low-air lamp", Channel.WARNING),
                    name("low-air buzzer", Channel.WARNING),
                    name("trailer valve shut", Channel.TRAILER_SHUT),
                    new Name("trailer knob in", Channel.TRAILER_SHUT, true));

    private static final List<String> TIMES = List.of("time", "timestamp");
    private static final List<Unit> PRESSURES = List.of(Unit.PSI, Unit.KPA, Unit.BAR);

    private CsvNames() {}

    private static Name name(String text, Channel channel) {
        return new Name(text, channel, false);
    }

    static List<Name> all() {
        return NAMES;
    }

    static Optional<String> time(String cell) {
        return TIMES.stream().filter(t -> isNamed(cell, t)).findFirst();
    }

    /** Returns the longest name that a head in small letters begins with. */
    static Optional<Name> find(String cell) {
        Name best = null;
        for (Name each : NAMES) {
            boolean longer = best == null || each.text().length() > best.text().length();
            if (longer && isNamed(cell, each.text())) {
                best = each;
            }
        }
        return Optional.ofNullable(best);
    }

    private static boolean isNamed(String cell, String name) {
        return cell.startsWith(name)
                && (cell.length() == name.length()
                        || " ([".indexOf(cell.charAt(name.length())) >= 0);
    }

    /** Returns the units a channel may be written in, the first as the core keeps it. */
    static List<Unit> units(Channel channel) {
        return switch (channel) {
            case PRIMARY, SECONDARY, SUPPLY, PARKING, APPLICATION -> PRESSURES;
            case ENGINE_SPEED -> List.of(Unit.RPM);
            case SPEED -> List.of(Unit.KMH, Unit.MPH, Unit.MPS);
            case PEDAL -> List.of(Unit.PERCENT);
            default -> List.of();
        };
    }

    static boolean isPressure(Channel channel) {
        return channel == Channel.PARKING || isCircuit(channel);
    }

    /** Whether any word behind the name is meant as a unit. */
    static boolean isCircuit(Channel channel) {
        return channel == Channel.PRIMARY
                || channel == Channel.SECONDARY
                || channel == Channel.SUPPLY
                || channel == Channel.APPLICATION;
    }
}
