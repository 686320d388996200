package org.fandown.vehicle;

import org.fandown.document.Json;

/** Vehicle files of our own invention, in the JSON form of a vehicle file. */
final class VehicleFiles {
    static final String TRACTOR_TRAILER =
            """
            {"name": "Yard tractor 7 with box trailer", "use": "property", "units": [
              {"kind": "tractor", "id": "T7", "built": "2018-05", "gross-mass": "11800 kg",
               "supply": "supply-reservoir",
               "reservoirs": [{"role": "supply", "volume": "1400 in3"}, {"role": "primary"}],
               "compressor": {"displacement": "717.9 cm3", "drive-ratio": 1.0},
               "governor": {"cut-in": "100 psi", "cut-out": "125 psi"},
               "low-air-warning": "lamp and buzzer", "abs": true,
               "standard": ["fmvss-121"],
               "axles": [
                 {"position": "steer", "brake": "drum", "chamber": "clamp 20",
                  "spring-brake": false, "adjuster": "automatic", "arm": "5.5 in"},
                 {"position": "drive", "brake": "drum", "chamber": "clamp 30",
                  "spring-brake": true, "adjuster": "manual",
                  "left": {"chamber": "clamp 24 long 3 in"}, "right": {"lining": "strip"}}]},
              {"kind": "trailer", "id": "B1", "axles": [
                 {"brake": "drum", "spring-brake": true, "chamber":
                  {"mount": "other", "type": "X9", "marked-limit": "2.2 in"}},
                 {"brake": "disc", "chamber": "clamp 24", "spring-brake": false,
                  "right": {"brake": "none"}}]}]}
            """;

    private VehicleFiles() {}

    static Vehicle read(String json) {
        return VehicleReader.read(Json.read("vehicle.json", json));
    }

    static Vehicle tractorTrailer() {
        return read(TRACTOR_TRAILER);
    }
}
