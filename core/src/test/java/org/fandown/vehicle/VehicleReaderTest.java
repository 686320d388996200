package org.fandown.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Optional;
import org.fandown.document.DocumentException;
import org.fandown.units.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VehicleReaderTest {
    @Test
    void what_the_file_says_is_kept_as_it_was_entered() {
        VehicleUnit tractor = VehicleFiles.tractorTrailer().powerUnit();

        assertThat(tractor.grossMass().map(Quantity::written)).contains("11800 kg");
        assertThat(tractor.built()).contains(BuildDate.ofMonth(2018, 5));
        assertThat(tractor.standards()).containsExactly(BuildStandard.FMVSS_121);
        assertThat(tractor.lowAirWarning()).contains(WarningDevice.LAMP_AND_BUZZER);
        assertThat(tractor.governor())
                .contains(
                        new Governor(
                                Optional.of(Quantity.parse("100 psi")),
                                Optional.of(Quantity.parse("125 psi"))));
    }

    @Test
    void what_the_file_leaves_out_stays_unknown() {
        VehicleUnit trailer = VehicleFiles.tractorTrailer().units().get(1);

        assertThat(trailer.grossMass()).isEmpty();
        assertThat(trailer.built()).isEmpty();
        assertThat(trailer.abs()).isEmpty();
        assertThat(trailer.reservoirs()).isEmpty();
        assertThat(trailer.axles().get(0).left().arm()).isEmpty();
    }

    @Test
    void documented_defaults_hold() {
        VehicleUnit trailer = VehicleFiles.tractorTrailer().units().get(1);

        assertThat(trailer.form()).contains(TrailerForm.SEMI);
        assertThat(trailer.brakes()).isEqualTo(BrakePower.AIR);
        assertThat(trailer.hasOdometer()).isFalse();
        assertThat(trailer.axles().get(0).position()).isEqualTo(AxlePosition.TRAILER);
    }

    @Test
    void one_side_of_an_axle_can_differ() {
        Axle drive = VehicleFiles.tractorTrailer().axle(2);

        assertThat(drive.left().chamber().orElseThrow().text()).isEqualTo("clamp 24 long 3 in");
        assertThat(drive.right().chamber().orElseThrow().text()).isEqualTo("clamp 30");
        assertThat(drive.left().lining()).isEmpty();
        assertThat(drive.right().lining()).contains(Lining.STRIP);
        assertThat(drive.left().adjuster()).contains(Adjuster.MANUAL);
    }

    @Test
    void a_side_without_a_brake_takes_no_part_of_a_brake_over() {
        assertThat(VehicleFiles.tractorTrailer().axle(4).right()).isEqualTo(WheelEnd.unbraked());
    }

    @ParameterizedTest(name = "{0} -> {1}: {3}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            textBlock =
                    """
                    "use": "property" | "use": "racing" | use | property, passenger
                    "kind": "tractor" | "kind": "dolly" | units[0].axles[0].position | trailer, other
                    "id": "B1" | "id": "T7" | units | the same id
                    "id": "B1", | "id": "B1", "compressor": {}, | units[1].compressor | towed unit
                    "id": "B1", | "id": "B1", "governor": {}, | units[1].governor | towed unit
                    "id": "B1", | "id": "B1", "low-air-warning": "flag", | units[1].low-air-warning | towed unit
                    "id": "B1", | "id": "B1", "supply": "supply-reservoir", | units[1].supply | towed unit
                    "id": "B1", | "id": "B1", "seats": 48, | units[1].seats | on a bus only
                    "id": "B1", | "id": "B1", "reservoirs": [{"role": "primary"}], | units[1].reservoirs | trailer, parking
                    "id": "B1", | "id": "B1", "brakes": "none", | units[1].axles[0].chamber | a chamber is given
                    "id": "B1", | "id": "B1", "brakes": "vacuum", | units[1].brakes | air-over-hydraulic
                    "id": "T7", | "id": "T7", "form": "semi", | units[0].form | has no form
                    "id": "T7", | "id": "T7", "brakes": "none", | units[0].axles[0].chamber | a chamber is given
                    "id": "T7", | "id": " ", | units[0].id | empty
                    {"role": "primary"} | {"role": "trailer"} | units[0].reservoirs | supply, primary
                    "volume": "1400 in3" | "volume": "0 in3" | units[0].reservoirs[0].volume | 10000 L
                    "volume": "1400 in3" | "volume": "1400 in" | units[0].reservoirs[0].volume | volume
                    "supply": "supply-reservoir" | "supply": "integrated-dryer-unit" | units[0].reservoirs | integrated dryer unit
                    "drive-ratio": 1.0 | "drive-ratio": 9 | units[0].compressor.drive-ratio | 0.1
                    "cut-in": "100 psi" | "cut-in": "125 psi" | units[0].governor.cut-in | below the cut-out
                    "cut-in": "100 psi" | "cut-in": "-5 psi" | units[0].governor.cut-in | 2000 kPa
                    "gross-mass": "11800 kg" | "gross-mass": "11800" | units[0].gross-mass | unit
                    "built": "2018-05" | "built": "2018-13" | units[0].built | 2018-05
                    "built": "2018-05" | "built": "2018-02-30" | units[0].built | date
                    "fmvss-121" | "fmvss-999" | units[0].standard[0] | fmvss-121
                    "position": "steer" | "position": "trailer" | units[0].axles[0].position | steer, drive
                    "position": "steer" | "position": "drive" | units[0].axles | position: steer
                    "chamber": "clamp 20" | "chamber": "clamp 21" | units[0].axles[0].chamber | 16, 18, 20, 24
                    "chamber": "clamp 20" | "chamber": "20" | units[0].axles[0].chamber | clamp 30
                    "chamber": "clamp 20" | "chamber": "clamp 9 long" | units[0].axles[0].chamber | long-stroke
                    "chamber": "clamp 20" | "chamber": "bolt C long" | units[0].axles[0].chamber | long-stroke
                    "chamber": "clamp 20" | "chamber": "bolt H" | units[0].axles[0].chamber | A, B, C
                    "chamber": "clamp 20" | "chamber": "clamp 20 3 in" | units[0].axles[0].chamber | 'long'
                    "chamber": "clamp 20" | "chamber": "clamp 20 long 9 in" | units[0].axles[0].chamber | 0.5 in
                    "chamber": "clamp 20" | "chamber": "clamp 20 short" | units[0].axles[0].chamber | rated stroke
                    "chamber": "clamp 20", | | units[0].axles[0] | chamber
                    "spring-brake": false, "adjuster" | "adjuster" | units[0].axles[0] | spring-brake
                    "brake": "drum", "chamber": "clamp 20", | "brake": "none", | units[0].axles[0].adjuster | an adjuster
                    "arm": "5.5 in" | "arm": "5.5 psi" | units[0].axles[0].arm | length
                    "arm": "5.5 in" | "arm": "5.5 ft" | units[0].axles[0].arm | 25 mm to 500 mm
                    "arm": "5.5 in" | "lining": "pads" | units[0].axles[0].lining | pads
                    "arm": "5.5 in" | "arms": "5.5 in" | units[0].axles[0].arms | arm
                    "left": {"chamber" | "left": {"load": "1 t", "chamber" | units[0].axles[1].left.load | not known
                    "marked-limit": "2.2 in" | "marked-limit": "2.2 in", "rated-stroke": "2 in" | units[1].axles[0].chamber.marked-limit | rated stroke
                    "mount": "other", "type": "X9" | "mount": "clamp", "type": "X9" | units[1].axles[0].chamber | there is no clamp chamber
                    """)
    void what_cannot_be_is_refused_where_it_stands(
            String correct, String broken, String path, String words) {
        assertThat(VehicleFiles.TRACTOR_TRAILER).contains(correct);
        String file = VehicleFiles.TRACTOR_TRAILER.replace(correct, broken == null ? "" : broken);

        DocumentException refusal =
                catchThrowableOfType(DocumentException.class, () -> VehicleFiles.read(file));

        assertThat(refusal).as("nothing was refused").isNotNull();
        assertThat(refusal.path()).isEqualTo(path);
        assertThat(refusal.line()).isPositive();
        assertThat(refusal.getMessage()).containsIgnoringCase(words);
    }

    @Test
    void a_dolly_carries_a_semi_trailer_only() {
        String dolly =
                """
                {"kind": "dolly", "id": "D1", "axles": [
                  {"brake": "drum", "chamber": "clamp 30", "spring-brake": false}]},
                """;
        String file = insertBeforeTrailer(dolly);
        assertThat(VehicleFiles.read(file).has(Part.DOLLY)).isTrue();

        String full = file.replace("\"id\": \"B1\",", "\"id\": \"B1\", \"form\": \"full\",");
        DocumentException refusal =
                catchThrowableOfType(DocumentException.class, () -> VehicleFiles.read(full));
        assertThat(refusal.getMessage()).contains("semi-trailer behind a dolly");
    }

    @Test
    void a_powered_unit_stands_in_front_only() {
        String bus =
                """
                {"kind": "bus", "id": "C1", "axles": [
                  {"position": "steer", "brake": "disc", "chamber": "clamp 20",
                   "spring-brake": false},
                  {"position": "drive", "brake": "disc", "chamber": "clamp 24",
                   "spring-brake": true}]},
                """;
        DocumentException refusal =
                catchThrowableOfType(
                        DocumentException.class, () -> VehicleFiles.read(insertBeforeTrailer(bus)));
        assertThat(refusal.path()).isEqualTo("units");
        assertThat(refusal.getMessage()).contains("Unit 2 is a bus");
    }

    private static String insertBeforeTrailer(String unit) {
        String trailer = "{\"kind\": \"trailer\", \"id\": \"B1\",";
        return VehicleFiles.TRACTOR_TRAILER.replace(trailer, unit + trailer);
    }
}
