package org.fandown.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.fandown.practice.Practices.scenario;

import java.util.List;
import java.util.Optional;
import org.fandown.air.AirVehicles;
import org.fandown.air.Fault;
import org.fandown.air.FaultCase;
import org.fandown.check.Component;
import org.fandown.check.PlaceCode;
import org.fandown.document.DocumentException;
import org.fandown.document.Json;
import org.fandown.evidence.VehicleSource;
import org.fandown.units.GaugePressure;
import org.fandown.units.Temperature;
import org.fandown.vehicle.Vehicle;
import org.fandown.yard.Trucks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ScenarioReaderTest {
    /** Pressures of files are held to a thousandth of a pascal. */
    private static final double FINENESS = 0.0005;

    private static final String FULL =
            """
            , 'told': 'Find it.', 'place': 'CA-ON', 'seed': 7, 'transmission': 'automatic',
            'start': {'pressure': '414 kPa', 'parking-brake': 'released', 'trailer-supply': 'open'},
            'ground': {'grade': '-4.5 %', 'air': '14 F'},
            'faults': [{'fault': 'service-diaphragm-leak', 'at': '3R', 'size': '1/16 in'},
                       {'fault': 'compressor-worn', 'size': '35 %'},
                       {'fault': 'water-in-primary', 'size': 0.25},
                       {'fault': 'governor-high', 'size': '980 kPa'},
                       {'fault': 'purge-stuck-open'}],
            'parts': {'tires': 'flat', 'air-lines': ['chafed', 'loose']}""";

    @Test
    void all_keys_are_read() {
        Scenario read = scenario("combination", FULL);

        assertThat(read.title()).isEqualTo("T");
        assertThat(read.told()).isEqualTo("Find it.");
        assertThat(read.place()).contains(new PlaceCode("CA-ON"));
        assertThat(read.seed()).isEqualTo(7);
        assertThat(read.transmission()).isEqualTo(Scenario.Transmission.AUTOMATIC);
        assertThat(read.start())
                .isEqualTo(new StartState(GaugePressure.ofKilopascals(414), false, true));
        assertThat(read.ground()).isEqualTo(new Ground(-0.045, Temperature.parse("14 F")));
        assertThat(read.parts())
                .containsEntry(Component.TIRES, List.of("flat"))
                .containsEntry(Component.AIR_LINES, List.of("chafed", "loose"));
        assertThat(read.faults())
                .containsExactly(
                        new FaultCase(Fault.SERVICE_DIAPHRAGM_LEAK, 1.5875, "3R"),
                        new FaultCase(Fault.COMPRESSOR_WORN, 0.35, ""),
                        new FaultCase(Fault.WATER_IN_PRIMARY, 0.25, ""),
                        new FaultCase(Fault.GOVERNOR_HIGH, 142.136982976, ""),
                        FaultCase.of(Fault.PURGE_STUCK_OPEN));
    }

    @Test
    void what_is_left_out_is_as_in_a_sound_vehicle_found_empty() {
        Scenario read = scenario("truck", "");

        assertThat(read.start()).isEqualTo(StartState.EMPTY);
        assertThat(read.ground()).isEqualTo(Ground.LEVEL);
        assertThat(read.transmission()).isEqualTo(Scenario.Transmission.MANUAL);
        assertThat(read.faults()).isEmpty();
        assertThat(read.parts()).isEmpty();
        assertThat(read.place()).isEqualTo(Optional.empty());
        assertThat(read.told()).isEmpty();
        assertThat(read.seed()).isEqualTo(1);
    }

    @Test
    void vehicle_can_stand_in_the_scenario_itself() {
        String text = "{'title': 'T', 'vehicle': " + Trucks.TRUCK + "}";

        assertThat(new ScenarioReader(VehicleSource.NONE).read(Practices.json(text)).vehicle())
                .isEqualTo(Practices.truck());
    }

    @Test
    void what_is_written_is_read_back_the_same() {
        Scenario read = scenario("combination", FULL);

        assertThat(again(read)).isEqualTo(read);
        assertThat(again(scenario("truck", ""))).isEqualTo(scenario("truck", ""));
    }

    @ParameterizedTest
    @EnumSource(Fault.class)
    void every_fault_of_usual_size_is_written_and_read_back_the_same(Fault fault) {
        FaultCase usual = fault.atWheel() ? FaultCase.at(fault, "2L") : FaultCase.of(fault);
        Vehicle vehicle =
                AirVehicles.all().stream()
                        .filter(v -> usual.refusal(v).isEmpty())
                        .findFirst()
                        .orElseThrow();
        Scenario scenario = Scenario.of(vehicle).with(usual);

        assertThat(again(scenario)).isEqualTo(scenario);
        assertThat(FaultFit.of(vehicle)).contains(fault);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0.1 psi",
                "33.33 psi",
                "6.3 bar",
                "634 kPa",
                "61.7 kPa",
                "149.999999 psi",
                "7 psi"
            })
    void pressure_is_read_back_to_the_last_bit(String pressure) {
        Scenario read = scenario("truck", ", 'start': {'pressure': '" + pressure + "'}");

        assertThat(again(read)).isEqualTo(read);
        assertThat(read.start().pressure().pascals())
                .isCloseTo(GaugePressure.parse(pressure).pascals(), within(FINENESS));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.1 %", "3.7 %", "-29.99 %", "30 %", "1/3 %"})
    void grade_is_read_back_to_the_last_bit(String grade) {
        Scenario read = scenario("truck", ", 'ground': {'grade': '" + grade + "'}");

        assertThat(again(read).ground()).isEqualTo(read.ground());
    }

    private static Scenario again(Scenario scenario) {
        String text = Json.write(ScenarioDocument.of(scenario));
        return new ScenarioReader(VehicleSource.NONE).read(Json.read("b.json", text));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "truck; 'seed': 1.5; seed; whole number; 0 to 999999999; digits",
                "truck; 'seed': -1; seed; out of range; 0 to 999999999; correct",
                "truck; 'place': 'Ontario'; place; not a place code; ISO 3166; capitals",
                "truck; 'fault': []; fault; not known here; faults; did you mean 'faults'",
                "truck; 'transmission': 'cvt'; transmission; not one; manual, automatic; names",
                "truck; 'start': {'pressure': '151 psi'}; start.pressure; no vehicle is found;"
                        + " 0 psi to 150 psi; correct",
                "truck; 'start': {'pressure': '-1 psi'}; start.pressure; no vehicle is found;"
                        + " 0 psi to 150 psi; correct",
                "truck; 'start': {'pressure': 60}; start.pressure; unit is missing; psi; add the"
                        + " unit",
                "truck; 'start': {'trailer-supply': 'open'}; start.trailer-supply; tows nothing;"
                        + " closed; trailer",
                "truck; 'start': {'parking-brake': 'on'}; start.parking-brake; not one; set,"
                        + " released; names",
                "truck; 'ground': {'grade': '31 %'}; ground.grade; out of range; -30 % to 30 %;"
                        + " correct",
                "truck; 'ground': {'air': '70 C'}; ground.air; out of range; -60 C to 60 C; correct",
                "truck; 'ground': {'air': '-999999 C'}; ground.air; out of range; -60 C to 60 C;"
                        + " correct",
                "truck; 'ground': {'air': '10 %'}; ground.air; share; temperature; C",
                "truck; 'parts': {'tyres': 'flat'}; parts.tyres; not a part; tires; did you mean"
                        + " 'tires'",
                "truck; 'parts': {'tires': []}; parts.tires; empty; low-tread; remove",
                "truck; 'faults': [{'fault': 'primary-leek'}]; faults[0].fault; not a fault;"
                        + " catalogue; did you mean 'primary-leak'",
                "truck; 'faults': [{'fault': 'gremlins'}]; faults[0].fault; not a fault; catalogue;"
                        + " --list-faults",
                "truck; 'faults': [{'fault': 'primary-leak', 'size': '6 mm'}]; faults[0].size;"
                        + " cannot have that size; 0.3 mm to 5 mm; usual",
                "truck; 'faults': [{'fault': 'primary-leak', 'size': '20 psi'}]; faults[0].size;"
                        + " pressure; length; 1 3/8 in",
                "truck; 'faults': [{'fault': 'primary-leak', 'size': 2}]; faults[0].size;"
                        + " unit is missing; length; add the unit",
                "truck; 'faults': [{'fault': 'compressor-worn', 'size': '90 %'}]; faults[0].size;"
                        + " cannot have that size; 20 % to 80 %; usual",
                "truck; 'faults': [{'fault': 'compressor-worn', 'size': 3}]; faults[0].size;"
                        + " out of range; 0 to 1; correct",
                "truck; 'faults': [{'fault': 'purge-stuck-open', 'size': '1 mm'}]; faults[0].size;"
                        + " there or not; no 'size'; remove",
                "truck; 'faults': [{'fault': 'primary-leak', 'at': '2L'}]; faults[0].at;"
                        + " no place to choose; no 'at'; remove",
                "truck; 'faults': [{'fault': 'adjuster-out'}]; faults[0]; 'at' is missing; wheel;"
                        + " add 'at'",
                "truck; 'faults': [{'fault': 'adjuster-out', 'at': '2l'}]; faults[0].at;"
                        + " not a wheel; 1L; capital",
                "truck; 'faults': [{'fault': 'adjuster-out', 'at': '3L'}]; faults[0].at;"
                        + " not on the vehicle; axles 1 to 2; count the axles",
                "truck; 'faults': [{'fault': 'spring-broken', 'at': '1L'}]; faults[0].fault;"
                        + " cannot have this fault; a part that the vehicle has; another",
                "truck; 'faults': [{'fault': 'lines-crossed'}]; faults[0].fault;"
                        + " cannot have this fault; a part that the vehicle has; another",
                "truck; 'faults': [{'fault': 'trailer-knob-sticks'}]; faults[0].fault;"
                        + " cannot have this fault; a part that the vehicle has; another",
                "truck; 'faults': [{'fault': 'trailer-reservoir-leak', 'at': 'unit2'}];"
                        + " faults[0].at; tows no such unit; a trailer; count",
                "combination; 'faults': [{'fault': 'trailer-reservoir-leak', 'at': 'unit3'}];"
                        + " faults[0].at; tows no such unit; unit2; count",
                "van; 'seed': 1; vehicle; cannot be fetched; path; correct the path",
            })
    void what_cannot_be_is_refused(
            String vehicle, String key, String path, String problem, String allowed, String next) {
        DocumentException refusal =
                catchThrowableOfType(DocumentException.class, () -> scenario(vehicle, ", " + key));

        assertThat(refusal.path()).isEqualTo(path);
        assertThat(refusal.problem()).containsIgnoringCase(problem);
        assertThat(refusal.allowed()).containsIgnoringCase(allowed);
        assertThat(refusal.nextStep()).containsIgnoringCase(next);
        assertThat(refusal.line()).isEqualTo(1);
    }

    @Test
    void title_and_vehicle_must_be_there() {
        ScenarioReader reader = new ScenarioReader(Practices::fetch);

        assertThat(
                        catchThrowableOfType(
                                DocumentException.class,
                                () -> reader.read(Practices.json("{'vehicle': 'truck'}"))))
                .hasMessageContaining("'title' is missing");
        assertThat(
                        catchThrowableOfType(
                                DocumentException.class,
                                () -> reader.read(Practices.json("{'title': 'T'}"))))
                .hasMessageContaining("'vehicle' is missing");
    }
}
