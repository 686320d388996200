package org.fandown.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.EnumSet;
import java.util.Map;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.fandown.units.Dimension;
import org.fandown.units.Quantity;
import org.fandown.units.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FieldsTest {
    private enum Status {
        MET,
        NOT_MET
    }

    @Test
    void reads_each_kind_of_value() {
        Fields fields =
                fields(
                        """
                        {"who": "A. Driver", "time": "1 min 14 s", "axles": 3, "share": 0.25,
                         "abs": "yes", "wet": false, "built": "2024-02-29",
                         "at": "2026-11-25T08:15:00-08:00", "status": "not-met", "brake": "drum",
                         "child": {"a": 1}, "items": ["x", "y"]}
                        """);

        assertThat(fields.text("who")).isEqualTo("A. Driver");
        assertThat(fields.quantity("time", Dimension.TIME))
                .isEqualTo(Quantity.of(74, Unit.SECOND))
                .hasToString("1 min 14 s");
        assertThat(fields.integer("axles", 1, 20)).isEqualTo(3);
        assertThat(fields.number("share", 0, 1)).isEqualTo(0.25);
        assertThat(fields.truth("abs")).isTrue();
        assertThat(fields.truth("wet")).isFalse();
        assertThat(fields.date("built")).isEqualTo(LocalDate.of(2024, 2, 29));
        assertThat(fields.moment("at")).isEqualTo(OffsetDateTime.parse("2026-11-25T08:15-08:00"));
        assertThat(fields.choice("status", Status.values())).isEqualTo(Status.NOT_MET);
        assertThat(fields.choice("brake", Map.of("drum", 1, "disc", 2))).isEqualTo(1);
        assertThat(fields.fields("child").integer("a", 0, 9)).isEqualTo(1);
        assertThat(fields.list("items")).extracting(Values::text).containsExactly("x", "y");
        fields.end();
    }

    @Test
    void absent_optional_keys_are_empty_and_known() {
        Fields fields = fields("{}");

        assertThat(fields.optionalText("a")).isEmpty();
        assertThat(fields.optionalQuantity("b", Dimension.TIME)).isEmpty();
        assertThat(fields.optionalInteger("c", 0, 1)).isEmpty();
        assertThat(fields.optionalNumber("d", 0, 1)).isEmpty();
        assertThat(fields.optionalTruth("e")).isEmpty();
        assertThat(fields.optionalDate("f")).isEmpty();
        assertThat(fields.optionalMoment("g")).isEmpty();
        assertThat(fields.optionalChoice("h", Status.values())).isEmpty();
        assertThat(fields.optionalFields("i")).isEmpty();
        assertThat(fields.optionalList("j")).isEmpty();
        assertThat(fields.optionalNode("k")).isEmpty();
        assertThat(fields.has("l")).isFalse();
        fields.end();
    }

    @Test
    void a_present_optional_key_is_read_as_strictly_as_any() {
        Fields fields = fields("{\"a\": \"x\", \"b\": null}");

        assertThat(fields.optionalText("a")).contains("x");
        assertThat(refusal(() -> fields.optionalInteger("a", 0, 1)).problem())
                .isEqualTo("this is not a whole number");
        assertThat(refusal(() -> fields.optionalText("b")).problem())
                .isEqualTo("there is no value");
    }

    @Test
    void an_unknown_key_is_refused_with_the_known_ones_and_the_nearest() {
        Fields fields = fields("{\n \"place\": \"CA\",\n \"vehcile\": 1}");
        fields.text("place");
        fields.has("vehicle");

        DocumentException refusal = refusal(fields::end);

        assertThat(refusal.line()).isEqualTo(3);
        assertThat(refusal.column()).isEqualTo(2);
        assertThat(refusal.path()).isEqualTo("vehcile");
        assertThat(refusal.problem()).isEqualTo("the key is not known here");
        assertThat(refusal.allowed()).isEqualTo("place, vehicle");
        assertThat(refusal.nextStep()).isEqualTo("did you mean 'vehicle'?");
        assertThat(refusal).hasMessageEndingWith("Next: Did you mean 'vehicle'?");
    }

    @Test
    void an_unknown_key_that_is_near_to_none_gets_other_advice() {
        Fields fields = fields("{\"colour\": 1}");
        fields.has("place");

        assertThat(refusal(fields::end).nextStep())
                .isEqualTo("remove it, or move it where it belongs");
        assertThat(refusal(fields("{\"colour\": 1}")::end).allowed()).isEqualTo("no key");
    }

    @Test
    void a_missing_key_is_refused_at_the_map_with_what_it_needs() {
        Fields fields = Fields.of(fields("{\"readings\": {}}").node("readings"));

        DocumentException refusal = refusal(() -> fields.quantity("time", Dimension.TIME));

        assertThat(refusal.path()).isEqualTo("readings");
        assertThat(refusal.column()).isEqualTo(14);
        assertThat(refusal.problem()).isEqualTo("the key 'time' is missing");
        assertThat(refusal.allowed()).isEqualTo("time: a time such as '74 s'");
    }

    @Test
    void several_missing_keys_are_named_together() {
        Fields fields = fields("{\"b\": 1}");

        assertThatThrownBy(() -> fields.require("a", "b", "c"))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("Keys are missing")
                .hasMessageContaining("the keys a, b, c")
                .hasMessageContaining("Add 'a', 'c'");
        fields("{\"a\": 1}").require("a");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
                    3              | the unit is missing
                    "3"            | the unit is missing
                    "92 psi"       | 'psi' is a pressure, not a time
                    "1,5 s"        | a comma in a number can be read in two ways
                    [3]            | a list cannot stand here
                    {"s": 3}       | a map cannot stand here
                    null           | there is no value
                    """)
    void a_quantity_says_what_is_wrong_with_it(String value, String problem) {
        assertProblem(value, problem, fields -> fields.quantity("k", Dimension.TIME));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
                    1.0      | this is not a whole number
                    1e1      | this is not a whole number
                    "1"      | this is not a whole number
                    true     | this is not a whole number
                    1000000000000000000000 | this is not a whole number
                    10       | the number is out of range
                    -1       | the number is out of range
                    4294967297 | the number is out of range
                    null     | there is no value
                    """)
    void an_integer_says_what_is_wrong_with_it(String value, String problem) {
        assertProblem(value, problem, fields -> fields.integer("k", 0, 9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
                    1e1      | this is not a plain number
                    "1"      | this is not a plain number
                    1.01     | the number is out of range
                    -0.01    | the number is out of range
                    """)
    void a_number_says_what_is_wrong_with_it(String value, String problem) {
        assertProblem(value, problem, fields -> fields.number("k", 0, 1));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
                    "Yes"    | this is neither yes nor no
                    "on"     | this is neither yes nor no
                    1        | this is neither yes nor no
                    """)
    void a_truth_value_is_one_of_four_words(String value, String problem) {
        assertProblem(value, problem, fields -> fields.truth("k"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
                    "2026-02-29"  | there is no such day in the calendar
                    "2100-02-29"  | there is no such day in the calendar
                    "2026-04-31"  | there is no such day in the calendar
                    "2026-00-10"  | there is no such day in the calendar
                    "2026-01-00"  | there is no such day in the calendar
                    "2026-13-01"  | the month must be at most 12
                    "2026-01-32"  | the day must be at most 31
                    "1899-12-31"  | the year must be 1900 to 2999
                    "3000-01-01"  | the year must be at most 2999
                    "26-01-01"    | it is not a date with year, month and day
                    "2026/01/01"  | the month is missing
                    "2026-1-001"  | the month must have 2 digits
                    "25 Nov 202"  | the year must have 4 digits
                    "2026-11-25T08:15:00Z" | it is not a date with year, month and day
                    20261125      | it is not a date with year, month and day
                    """)
    void a_date_says_what_is_wrong_with_it(String value, String problem) {
        assertProblem(value, problem, fields -> fields.date("k"));
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-25T08:15:00-08:00, 2026-11-25T08:15-08:00",
        "2026-11-25T08:15Z,         2026-11-25T08:15Z",
        "2026-11-25 08:15 -08:00,   2026-11-25T08:15-08:00",
        "2026-11-25 08:15:30.25+05:30, 2026-11-25T08:15:30.250+05:30",
        "2000-02-29T23:59:59+14:00, 2000-02-29T23:59:59+14:00",
    })
    void a_moment_may_leave_out_what_is_zero_but_not_its_offset(String text, String same) {
        assertThat(fields("{\"k\": \"" + text + "\"}").moment("k"))
                .isEqualTo(OffsetDateTime.parse(same));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
                    "2026-11-25"                | the time of day is missing
                    "2026-11-25T08"             | the minutes are missing
                    "2026-11-25T08:15"          | the distance from UTC is missing or not clear
                    "2026-11-25T08:15:00"       | the distance from UTC is missing or not clear
                    "2026-11-25T08:15:00 PST"   | the distance from UTC is missing or not clear
                    "2026-11-25T24:00:00Z"      | the hour must be at most 23
                    "2026-11-25T08:60:00Z"      | the minutes must be at most 59
                    "2026-11-25T08:15:60Z"      | the seconds must be at most 59
                    "2026-11-25T8:15:00Z"       | the hour must have 2 digits
                    "2026-11-25T08:15:00.Z"     | the fraction of a second needs 1 to 9 digits
                    "2026-11-25T08:15:00.0000000001Z" | the fraction of a second needs 1 to 9 digits
                    "2026-11-25T08:15:00-0800"  | the distance from UTC must have 2 digits
                    "2026-11-25T08:15:00-08"    | the minutes of the distance from UTC are missing
                    "2026-11-25T08:15:00-15:00" | the distance from UTC must be at most 14
                    "2026-11-25T08:15:00Zx"     | something follows the distance from UTC
                    """)
    void a_moment_says_what_is_wrong_with_it(String value, String problem) {
        assertProblem(value, problem, fields -> fields.moment("k"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"\"", "\"  \"", "null", "[]", "{}"})
    void a_text_must_say_something(String value) {
        assertThatThrownBy(() -> fields("{\"k\": " + value + "}").text("k"))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("k: ");
    }

    @Test
    void numbers_and_truth_values_can_serve_as_text_as_they_were_written() {
        Fields fields = fields("{\"unit\": 120, \"plate\": 1e3, \"note\": true}");

        assertThat(fields.text("unit")).isEqualTo("120");
        assertThat(fields.text("plate")).isEqualTo("1e3");
        assertThat(fields.text("note")).isEqualTo("true");
    }

    @Test
    void a_choice_names_what_is_allowed_and_the_nearest() {
        Fields fields = fields("{\"k\": \"notmet\", \"far\": \"banana\"}");

        DocumentException near = refusal(() -> fields.choice("k", Status.values()));
        DocumentException far = refusal(() -> fields.choice("far", Status.values()));

        assertThat(near.allowed()).isEqualTo("met, not-met");
        assertThat(near.nextStep()).isEqualTo("did you mean 'not-met'?");
        assertThat(far.nextStep()).isEqualTo("take one of these names");
    }

    @Test
    void a_loader_can_refuse_at_the_line_of_a_key() {
        Fields fields = fields("{\n\"cut-in\": \"100 psi\"}");

        DocumentException refusal = fields.refuse("cut-in", "it exceeds the cut-out", "", "swap");

        assertThat(refusal)
                .hasMessage(
                        "a.json:2:11: cut-in: It exceeds the cut-out (value '100 psi'). Next: Swap.");
        assertThat(fields.refuse("absent", "x", "", "").line()).isEqualTo(1);
    }

    @Test
    void only_a_map_has_fields_and_only_a_list_has_items() {
        assertThat(refusal(() -> Fields.of(Json.read("a.json", "[]"))).problem())
                .isEqualTo("a list cannot stand here");
        assertThat(refusal(() -> fields("{\"k\": {}}").list("k")).problem())
                .isEqualTo("a map cannot stand here");
    }

    @Test
    void a_quantity_may_be_of_one_of_several_dimensions() {
        Fields fields = fields("{\"k\": \"20 %\"}");

        assertThat(fields.quantity("k", EnumSet.of(Dimension.LENGTH, Dimension.RATIO)).unit())
                .isEqualTo(Unit.PERCENT);
        assertThat(
                        refusal(
                                        () ->
                                                fields("{}")
                                                        .quantity(
                                                                "k",
                                                                EnumSet.of(
                                                                        Dimension.RATIO,
                                                                        Dimension.LENGTH)))
                                .allowed())
                .isEqualTo("k: a length such as '1 3/8 in' or a share such as '20 %'");
    }

    private interface Reading {
        void from(Fields fields);
    }

    private static void assertProblem(String value, String problem, Reading reading) {
        Fields fields = fields("{\"k\": " + value + "}");

        DocumentException refusal = refusal(() -> reading.from(fields));

        assertThat(refusal.problem()).isEqualTo(problem);
        assertThat(refusal.path()).isEqualTo("k");
        assertThat(refusal.line()).isEqualTo(1);
        assertThat(refusal.column()).isEqualTo(7);
        assertThat(refusal.allowed()).isNotEmpty();
        assertThat(refusal.nextStep()).isNotEmpty();
    }

    private static Fields fields(String json) {
        return Fields.of(Json.read("a.json", json));
    }

    private static DocumentException refusal(ThrowingCallable action) {
        return catchThrowableOfType(DocumentException.class, action);
    }
}
