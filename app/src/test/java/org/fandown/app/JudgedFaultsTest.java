package org.fandown.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.fandown.air.AirDefault;
import org.fandown.air.AirSetup;
import org.fandown.air.Fault;
import org.fandown.air.FaultCase;
import org.fandown.air.InCab;
import org.fandown.app.files.DocumentFiles;
import org.fandown.app.files.RulePacks;
import org.fandown.check.Check;
import org.fandown.check.PlaceCode;
import org.fandown.document.Json;
import org.fandown.evidence.InspectionReader;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Judge;
import org.fandown.judgement.Status;
import org.fandown.rulebook.Rulebook;
import org.fandown.units.Decimals;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the cab tests give on a faulty truck is not met by the rules that are in force. */
class JudgedFaultsTest {
    private static final Path VEHICLE =
            Path.of("..", "examples", "vehicles", "tractor-box-trailer.yaml");

    /** The governor of the example is a little lower than the default of the model. */
    private static final AirSetup SOUND =
            AirSetup.SOUND.with(AirDefault.CUT_IN, AirDefault.CUT_IN.number());

    private static final RulePacks PACKS = RulePacks.builtIn();

    @ParameterizedTest(name = "{0}: {1} finds {2}")
    @CsvSource({
        "CA-BC, GOVERNOR_CUT_OUT, GOVERNOR_HIGH",
        "CA-SK, GOVERNOR_CUT_OUT, GOVERNOR_LOW",
        "CA-BC, GOVERNOR_CUT_OUT, GOVERNOR_STICKING",
        "CA-BC, GOVERNOR_CUT_IN, CUT_IN_LOW",
        "CA-BC, LOW_AIR_WARNING, LOW_AIR_SET_LOW",
        "CA-ON, LOW_AIR_WARNING, LOW_AIR_SET_LOW",
        "CA-BC, TRAILER_SUPPLY_CLOSING, TRAILER_KNOB_POPS_EARLY",
        "CA-BC, TRAILER_SUPPLY_CLOSING, TRAILER_KNOB_POPS_LATE",
        "US-GA, PARKING_VALVE_CLOSING, PARKING_POPS_EARLY",
        "US-GA, PARKING_VALVE_CLOSING, PARKING_POPS_LATE"
    })
    void a_reading_is_met_on_a_sound_truck_and_not_met_on_a_faulty_one(
            String place, Check check, Fault fault) throws IOException {
        Vehicle vehicle = VehicleReader.read(DocumentFiles.read(VEHICLE));

        assertThat(judged(place, check, new InCab(vehicle, SOUND))).containsOnly(Status.MET);
        AirSetup faulty = FaultCase.of(fault).in(SOUND);
        assertThat(judged(place, check, new InCab(vehicle, faulty))).contains(Status.NOT_MET);
    }

    private static Set<Status> judged(String place, Check check, InCab tests) {
        String document =
                """
                {"place": "%s", "moment": "2026-11-25T08:00:00Z", "conditions": "as-printed",
                 "vehicle": "%s", "readings": {"%s": "%s psi"}}
                """
                        .formatted(
                                place,
                                VEHICLE,
                                check.id(),
                                Decimals.format(procedure(check).applyAsDouble(tests), 1));
        var inspection =
                new InspectionReader(name -> DocumentFiles.read(VEHICLE))
                        .read(Json.read("inspection.json", document));
        Rulebook rulebook = PACKS.rulebookFor(new PlaceCode(place)).orElseThrow();
        Set<Status> found = new LinkedHashSet<>();
        for (Finding finding : Judge.judge(rulebook, inspection).findings()) {
            if (finding.ruling().rule().check() == check) {
                found.add(finding.status());
            }
        }
        return found;
    }

    private static ToDoubleFunction<InCab> procedure(Check check) {
        return switch (check) {
            case GOVERNOR_CUT_OUT -> InCab::cutOut;
            case GOVERNOR_CUT_IN -> InCab::cutIn;
            case LOW_AIR_WARNING -> InCab::lowAirLamp;
            case TRAILER_SUPPLY_CLOSING -> InCab::trailerPop;
            case PARKING_VALVE_CLOSING -> InCab::parkingPop;
            default -> throw new IllegalArgumentException(check.id());
        };
    }
}
