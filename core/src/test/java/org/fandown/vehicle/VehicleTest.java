package org.fandown.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

class VehicleTest {
    private final Vehicle vehicle = VehicleFiles.tractorTrailer();

    @Test
    void axles_are_counted_through_the_whole_combination() {
        assertThat(vehicle.axleCount()).isEqualTo(4);
        assertThat(vehicle.wheels())
                .extracting(WheelId::toString)
                .containsExactly("1L", "1R", "2L", "2R", "3L", "3R", "4L", "4R");
        assertThat(vehicle.axle(3).position()).isEqualTo(AxlePosition.TRAILER);
    }

    @Test
    void each_axle_knows_its_unit() {
        assertThat(vehicle.unitOf(1).id()).isEqualTo("T7");
        assertThat(vehicle.unitOf(2).id()).isEqualTo("T7");
        assertThat(vehicle.unitOf(3).id()).isEqualTo("B1");
        assertThat(vehicle.firstAxleOf(vehicle.units().get(1))).isEqualTo(3);
    }

    @Test
    void a_wheel_without_a_chamber_has_no_push_rod_to_measure() {
        assertThat(vehicle.wheelsWithPushRod())
                .extracting(WheelId::toString)
                .containsExactly("1L", "1R", "2L", "2R", "3L", "3R", "4L");
    }

    @Test
    void an_axle_that_is_not_there_is_the_callers_mistake() {
        assertThatIllegalArgumentException().isThrownBy(() -> vehicle.axle(5));
        assertThatIllegalArgumentException().isThrownBy(() -> vehicle.axle(0));
        assertThat(vehicle.findWheel(WheelId.parse("5L"))).isEmpty();
    }

    @Test
    void parts_are_those_the_file_speaks_of() {
        assertThat(vehicle.parts())
                .containsExactly(
                        Part.TRACTOR,
                        Part.TRAILER,
                        Part.AIR_BRAKES,
                        Part.AIR_BRAKED_TRAILER,
                        Part.SPRING_BRAKES,
                        Part.TRAILER_SPRING_BRAKES,
                        Part.ABS,
                        Part.ODOMETER,
                        Part.SUPPLY_RESERVOIR,
                        Part.DRUM_BRAKES,
                        Part.DISC_BRAKES,
                        Part.MANUAL_ADJUSTERS,
                        Part.AUTOMATIC_ADJUSTERS,
                        Part.LONG_STROKE_CHAMBERS);
    }

    @Test
    void units_are_found_by_what_they_are() {
        assertThat(vehicle.isCombination()).isTrue();
        assertThat(vehicle.powerUnit().id()).isEqualTo("T7");
        assertThat(vehicle.trailers()).extracting(VehicleUnit::id).containsExactly("B1");
        assertThat(vehicle.unitsWithAirBrakes()).hasSize(2);
    }

    @Test
    void a_wheel_name_reads_back() {
        for (String name : List.of("1L", "9R", "10L", "80R")) {
            assertThat(WheelId.parse(name)).hasToString(name);
        }
        assertThat(WheelId.parse("3L").opposite()).isEqualTo(WheelId.parse("3R"));
        assertThat(WheelId.parse("2R")).isLessThan(WheelId.parse("10L"));
    }

    @Test
    void a_text_that_is_no_wheel_name_is_refused() {
        for (String name : List.of("", "L", "0L", "01L", "1", "1l", "L1", "1X", "1234L", "-1L")) {
            assertThatIllegalArgumentException()
                    .as(name)
                    .isThrownBy(() -> WheelId.parse(name))
                    .withMessageContaining("is not a wheel");
        }
    }
}
