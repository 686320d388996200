package org.fandown.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    92 psi            | 92      | PSI
                    92psi             | 92      | PSI
                    92 PSI            | 92      | PSI
                    92 psig           | 92      | PSI
                    92 lb/in2         | 92      | PSI
                    634 kPa           | 634     | KPA
                    634 KPA           | 634     | KPA
                    1 000 kPa         | 1000    | KPA
                    1 234 567.5 kPa   | 1234567.5 | KPA
                    6.3 bar           | 6.3     | BAR
                    14.7 psia         | 14.7    | PSI_ABS
                    101.3 kPa abs     | 101.3   | KPA_ABS
                    1.013 bar abs     | 1.013   | BAR_ABS
                    1 3/8 in          | 1.375   | INCH
                    1-3/8 in          | 1.375   | INCH
                    1 3/8"            | 1.375   | INCH
                    1 3/8 in.         | 1.375   | INCH
                    1\u00bd in        | 1.5     | INCH
                    1 \u00bd in       | 1.5     | INCH
                    \u00be in         | 0.75    | INCH
                    3/4 in            | 0.75    | INCH
                    2 inches          | 2       | INCH
                    35 mm             | 35      | MM
                    3.5 cm            | 3.5     | CM
                    12.2 m            | 12.2    | METRE
                    48 ft             | 48      | FOOT
                    48 ft 6 in        | 582     | INCH
                    2800 in3          | 2800    | CUBIC_INCH
                    2800 cu in        | 2800    | CUBIC_INCH
                    2800 cu. in.      | 2800    | CUBIC_INCH
                    30 L              | 30      | LITRE
                    30 l              | 30      | LITRE
                    718 cm\u00b3      | 718     | CUBIC_CM
                    1750 lbf          | 1750    | LBF
                    7784 N            | 7784    | NEWTON
                    7.8 kN            | 7.8     | KILONEWTON
                    74 s              | 74      | SECOND
                    74 sec            | 74      | SECOND
                    1 min 14 s        | 74      | SECOND
                    1min14s           | 74      | SECOND
                    1 min 14.5 s      | 74.5    | SECOND
                    1:14 min          | 74      | SECOND
                    3 min             | 3       | MINUTE
                    1:30 h            | 90      | MINUTE
                    1 h 30 min        | 90      | MINUTE
                    1 h 2 min 3 s     | 3723    | SECOND
                    2 h               | 2       | HOUR
                    1 d               | 1       | DAY
                    1100 rpm          | 1100    | RPM
                    1100 r/min        | 1100    | RPM
                    -20 C             | -20     | CELSIUS
                    \u221220 \u00b0C  | -20     | CELSIUS
                    68 F              | 68      | FAHRENHEIT
                    293.15 K          | 293.15  | KELVIN
                    20 mph            | 20      | MPH
                    32 km/h           | 32      | KMH
                    9 m/s             | 9       | MPS
                    80000 lb          | 80000   | POUND
                    500 kg            | 500     | KILOGRAM
                    36.3 t            | 36.3    | TONNE
                    14 ft/s2          | 14      | FT_PER_S2
                    4.3 m/s\u00b2     | 4.3     | M_PER_S2
                    4.3 m/s^2         | 4.3     | M_PER_S2
                    90 deg            | 90      | DEGREE
                    20 %              | 20      | PERCENT
                    20 percent        | 20      | PERCENT
                    2 each            | 2       | EACH
                    .5 psi            | 0.5     | PSI
                    +5 psi            | 5       | PSI
                    """)
    void reads_what_people_write(String text, double value, Unit unit) {
        Quantity quantity = Quantity.parse(text);

        assertThat(quantity.value()).isEqualTo(value);
        assertThat(quantity.unit()).isEqualTo(unit);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1 3/8 in", "1-3/8\"", "1 000 kPa", "1:14 min", "92PSIG", "20 \u00b0C"})
    void gives_back_the_text_as_entered(String text) {
        assertThat(Quantity.parse(text)).hasToString(text);
    }

    @Test
    void drops_only_the_space_around_the_text() {
        assertThat(Quantity.parse("  1  min  14 s\t").written()).isEqualTo("1  min  14 s");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    92           | the unit is missing                      | add the unit, as in '92 psi'
                    1:14         | the unit is missing                      | add the unit, as in '92 psi'
                    1 min 14     | the unit is missing                      | add the unit, as in '92 psi'
                    6,3 bar      | a comma in a number can be read in two ways | write '6.3'
                    1,100 rpm    | a comma in a number can be read in two ways | write '1100' for thousands, or a point for decimals
                    90, psi      | a comma in a number can be read in two ways | leave the comma out
                    90-100 psi   | two numbers stand where one is needed    | write one value, not a range
                    90 to 99 psi | two numbers stand where one is needed    | write one value, not a range
                    1 2 psi      | two numbers stand where one is needed    | write it like '92 psi'
                    1 0000 kPa   | two numbers stand where one is needed    | write it like '92 psi'
                    1000 000 kPa | two numbers stand where one is needed    | write it like '92 psi'
                    psi          | it does not start with a number          | write it like '92 psi'
                    ~90 psi      | it does not start with a number          | write it like '92 psi'
                    > 90 psi     | it does not start with a number          | write it like '92 psi'
                    ''           | nothing is written                       | write it like '92 psi'
                    90 foo       | 'foo' is not a known unit                | write it like '92 psi'
                    90 M         | 'M' is not a known unit                  | write it like '92 psi'
                    90 k         | 'k' is not a known unit                  | write it like '92 psi'
                    1e3 psi      | 'e3 psi' is not a known unit             | write it like '92 psi'
                    5. psi       | a point must stand between digits        | write it like '92 psi'
                    1.2.3 psi    | a point must stand between digits        | write it like '92 psi'
                    1/0 in       | the fraction is not complete             | write it like '92 psi'
                    1/ in        | the fraction is not complete             | write it like '92 psi'
                    1/2/3 in     | the fraction is not complete             | write it like '92 psi'
                    1 8/8 in     | the fraction after a whole number must be less than one | write it like '92 psi'
                    1:60 min     | after a colon two digits below 60 are needed, and no more | write it like '92 psi'
                    1:4 min      | after a colon two digits below 60 are needed, and no more | write it like '92 psi'
                    1:14 psi     | a colon stands only between min and s or between h and min | write it like '92 psi'
                    1 min 60 s   | the larger unit must be a whole number and the smaller one less than 60 | write it like '92 psi'
                    5 ft 12 in   | the larger unit must be a whole number and the smaller one less than 12 | write it like '92 psi'
                    1.5 min 14 s | the larger unit must be a whole number and the smaller one less than 60 | write it like '92 psi'
                    1 min 2 h    | only h, min and s, or ft and in can be joined | write it like '92 psi'
                    1 psi 2 kPa  | only h, min and s, or ft and in can be joined | write it like '92 psi'
                    2000000000 psi | the number is larger than anything that is measured here | write it like '92 psi'
                    1.000000000000000 psi | the number has more digits than any gauge shows | write it like '92 psi'
                    """)
    void refuses_what_can_be_misread_and_says_what_to_do(
            String text, String problem, String nextStep) {
        QuantityFormatException refusal =
                catchThrowableOfType(QuantityFormatException.class, () -> Quantity.parse(text));

        assertThat(refusal.written()).isEqualTo(text);
        assertThat(refusal.problem()).isEqualTo(problem);
        assertThat(refusal.nextStep()).isEqualTo(nextStep);
        assertThat(refusal.allowed()).isNotEmpty();
    }

    @Test
    void a_refusal_names_text_problem_allowed_and_next_step_in_its_message() {
        assertThatThrownBy(() -> Quantity.parse("6,3 bar", Dimension.GAUGE_PRESSURE))
                .hasMessage(
                        "'6,3 bar': a comma in a number can be read in two ways."
                                + " Allowed: a pressure in psi, kPa, bar. Next: write '6.3'.");
    }

    @Test
    void a_unit_of_another_dimension_is_refused_with_an_example_of_the_right_one() {
        QuantityFormatException refusal =
                catchThrowableOfType(
                        QuantityFormatException.class,
                        () -> Quantity.parse("92 psi", Dimension.TIME));

        assertThat(refusal.problem()).isEqualTo("'psi' is a pressure, not a time");
        assertThat(refusal.allowed()).isEqualTo("a time in s, min, h, d");
        assertThat(refusal.nextStep()).isEqualTo("write it like '74 s'");
    }

    @Test
    void gauge_pressure_does_not_pass_for_absolute_pressure() {
        assertThatThrownBy(() -> Quantity.parse("14.7 psi", Dimension.ABSOLUTE_PRESSURE))
                .isInstanceOf(QuantityFormatException.class)
                .hasMessageContaining("write 'psi abs' if it counts from vacuum");
        assertThatThrownBy(() -> Quantity.parse("14.7 psia", Dimension.GAUGE_PRESSURE))
                .isInstanceOf(QuantityFormatException.class)
                .hasMessageContaining("not a pressure");
    }

    @Test
    void one_of_several_dimensions_will_do() {
        EnumSet<Dimension> either = EnumSet.of(Dimension.LENGTH, Dimension.TIME);

        assertThat(Quantity.parse("35 mm", either).unit()).isEqualTo(Unit.MM);
        assertThat(Quantity.parse("74 s", either).unit()).isEqualTo(Unit.SECOND);
        assertThatThrownBy(() -> Quantity.parse("92 psi", either))
                .hasMessageContaining("not a length or a time");
    }

    @Test
    void a_pound_is_a_mass_and_not_a_force() {
        assertThatThrownBy(() -> Quantity.parse("1750 lb", Dimension.FORCE))
                .hasMessageContaining("'lb' is a mass, not a force");
    }

    @Test
    void long_and_unprintable_text_is_shown_in_one_short_line() {
        assertThatThrownBy(() -> Quantity.parse("9\n" + "x".repeat(500)))
                .isInstanceOf(QuantityFormatException.class)
                .message()
                .startsWith("'9?xxx")
                .hasSizeLessThan(300)
                .doesNotContain("\n");
    }

    @Test
    void equality_looks_at_number_and_unit_and_not_at_the_text() {
        assertThat(Quantity.parse("3/4 in"))
                .isEqualTo(Quantity.parse("0.75 inch"))
                .hasSameHashCodeAs(Quantity.parse("0.75 inch"))
                .isEqualTo(Quantity.of(0.75, Unit.INCH));
        assertThat(Quantity.parse("10 mm")).isNotEqualTo(Quantity.parse("1 cm"));
        assertThat(Quantity.parse("10 mm")).isNotEqualTo(Quantity.parse("11 mm"));
    }

    @Test
    void minus_zero_is_zero() {
        assertThat(Quantity.of(-0.0, Unit.PSI)).isEqualTo(Quantity.of(0.0, Unit.PSI));
        assertThat(1 / Quantity.parse("-0 psi").value()).isPositive();
    }

    @ParameterizedTest
    @ValueSource(strings = {"1 min 14 s\u00a0", "\u00a01 min\u00a014 s", "1\u202fmin 14 s\u2009"})
    void spaces_of_word_processors_do_not_matter(String text) {
        assertThat(Quantity.parse(text)).isEqualTo(Quantity.of(74, Unit.SECOND));
    }

    @Test
    void at_least_one_dimension_must_be_allowed() {
        assertThatThrownBy(() -> Quantity.parse("92 psi", EnumSet.noneOf(Dimension.class)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("At least one dimension must be allowed.");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1.1e15})
    void numbers_that_are_not_finite_or_too_large_are_refused(double value) {
        assertThatThrownBy(() -> Quantity.of(value, Unit.PSI))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_computed_quantity_writes_at_most_six_decimals() {
        assertThat(Quantity.of(1.0 / 3, Unit.PSI)).hasToString("0.333333 psi");
        assertThat(Quantity.of(92, Unit.PSI)).hasToString("92 psi");
    }

    @Test
    void converts_within_a_dimension_only() {
        Quantity inch = Quantity.parse("1 3/8 in");

        assertThat(inch.valueIn(Unit.MM)).isEqualTo(34.925);
        assertThat(inch.in(Unit.INCH)).isSameAs(inch);
        assertThat(inch.in(Unit.MM)).isEqualTo(Quantity.of(34.925, Unit.MM));
        assertThatThrownBy(() -> inch.valueIn(Unit.PSI))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Cannot convert in to psi: a length is not a pressure.");
        assertThatThrownBy(() -> Quantity.parse("0 psi").valueIn(Unit.PSI_ABS))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    118 psi     | PSI     | 118 psi
                    118 psi     | KPA     | 813.6 kPa
                    34.925 mm   | INCH    | 1 3/8 in
                    0.75 in     | INCH    | 3/4 in
                    2 in        | INCH    | 2 in
                    -1.5 in     | INCH    | -1 1/2 in
                    35 mm       | INCH    | 1.378 in
                    74 s        | SECOND  | 74 s
                    74 s        | MINUTE  | 1 min 14 s
                    45 s        | MINUTE  | 45 s
                    120 s       | MINUTE  | 2 min
                    119.96 s    | MINUTE  | 2 min
                    0 s         | MINUTE  | 0 min
                    -74 s       | MINUTE  | -1 min 14 s
                    212 F       | CELSIUS | 100 C
                    6.3 bar     | BAR     | 6.3 bar
                    """)
    void prints_as_people_write(String text, Unit unit, String printed) {
        assertThat(Quantity.parse(text).print(unit)).isEqualTo(printed);
    }
}
