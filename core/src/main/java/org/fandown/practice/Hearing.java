package org.fandown.practice;

import java.util.ArrayList;
import java.util.List;
import org.fandown.air.AirOutlet;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.WheelId;

/** What a person hears of the air that escapes, and from where. */
final class Hearing {
    /** Free air of 1 kg at 20 C and one atmosphere, L. */
    private static final double LITRES = 1000 / 1.204;

    private static final double MINUTE = 60;

    private final Vehicle vehicle;
    private final List<Source> sources = new ArrayList<>();

    private record Source(AirOutlet outlet, Station at) {}

    Hearing(Vehicle vehicle, List<AirOutlet> outlets) {
        this.vehicle = vehicle;
        for (AirOutlet outlet : outlets) {
            if (outlet.kind() != AirOutlet.Kind.SEEP) {
                sources.add(new Source(outlet, station(outlet)));
            }
        }
    }

    List<Sound> from(Station ear, boolean engineRuns) {
        List<Sound> heard = new ArrayList<>();
        for (Source source : sources) {
            double flow = litres(source.outlet());
            double level = level(flow, source.at(), ear, engineRuns);
            if (level >= 1) {
                AirOutlet outlet = source.outlet();
                heard.add(new Sound(outlet.kind(), outlet.name(), source.at(), flow, level));
            }
        }
        return heard;
    }

    static double litres(AirOutlet outlet) {
        return outlet.kilogramsPerSecond() * LITRES * MINUTE;
    }

    private double level(double flow, Station from, Station ear, boolean engineRuns) {
        double level = flow / PracticeDefault.HEARD.number() * nearness(from, ear);
        return engineRuns ? level * PracticeDefault.ENGINE_NOISE.number() : level;
    }

    private double nearness(Station from, Station ear) {
        if (from.equals(ear)) {
            return 1;
        }
        boolean shut = ear.equals(Station.CAB);
        return !shut && unit(from) == unit(ear)
                ? PracticeDefault.UNIT_DISTANCE.number()
                : PracticeDefault.FAR_DISTANCE.number();
    }

    /** The unit a place belongs to; the glad hands count to the unit in front. */
    private int unit(Station station) {
        return switch (station.spot()) {
            case CAB, FRONT -> 1;
            case REAR -> vehicle.units().size();
            case COUPLING, RESERVOIRS -> station.unit();
            case WHEEL -> station.wheel().map(this::unit).orElse(1);
        };
    }

    private int unit(WheelId wheel) {
        return vehicle.units().indexOf(vehicle.unitOf(wheel.axle())) + 1;
    }

    /** Where an outlet is, by the names of the air system. */
    private Station station(AirOutlet outlet) {
        String volume = outlet.volume();
        if (outlet.kind() == AirOutlet.Kind.COUPLING) {
            return Station.coupling(lastDigit(outlet.name()));
        }
        int dot = volume.indexOf('.');
        if (dot > 0 && volume.charAt(0) <= '9') {
            return Station.at(WheelId.parse(volume.substring(0, dot)));
        }
        if (volume.startsWith("unit")) {
            return Station.reservoirs(volume.charAt("unit".length()) - '0');
        }
        if (volume.startsWith("supply-line-") || volume.startsWith("control-line-")) {
            int unit = lastDigit(volume);
            return unit == 1 ? Station.coupling(1) : Station.reservoirs(unit);
        }
        return isBehindDash(volume) ? Station.CAB : Station.reservoirs(1);
    }

    private static boolean isBehindDash(String volume) {
        return volume.equals("dash") || volume.equals("park-line") || volume.endsWith("-delivery");
    }

    private static int lastDigit(String text) {
        return text.charAt(text.length() - 1) - '0';
    }
}
