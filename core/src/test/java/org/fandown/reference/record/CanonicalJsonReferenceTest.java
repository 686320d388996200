package org.fandown.reference.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.fandown.document.Json;
import org.fandown.record.CanonicalJson;
import org.fandown.reference.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CanonicalJsonReferenceTest {
    private static final int HEX = 16;

    @Source(
            work = "RFC 8785, JSON Canonicalization Scheme (JCS)",
            edition = "June 2020",
            where = "Appendix B, number serialization samples, every finite row",
            kind = Source.Kind.STANDARD,
            accessed = "2026-12-01",
            note = "read at second hand, in works that quote the table and agree with each other")
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "0000000000000000, 0",
        "8000000000000000, 0",
        "0000000000000001, 5e-324",
        "8000000000000001, -5e-324",
        "7fefffffffffffff, 1.7976931348623157e+308",
        "ffefffffffffffff, -1.7976931348623157e+308",
        "4340000000000000, 9007199254740992",
        "c340000000000000, -9007199254740992",
        "4430000000000000, 295147905179352830000",
        "44b52d02c7e14af5, 9.999999999999997e+22",
        "44b52d02c7e14af6, 1e+23",
        "44b52d02c7e14af7, 1.0000000000000001e+23",
        "444b1ae4d6e2ef4e, 999999999999999700000",
        "444b1ae4d6e2ef4f, 999999999999999900000",
        "444b1ae4d6e2ef50, 1e+21",
        "3eb0c6f7a0b5ed8c, 9.999999999999997e-7",
        "3eb0c6f7a0b5ed8d, 0.000001",
        "41b3de4355555553, 333333333.3333332",
        "41b3de4355555554, 333333333.33333325",
        "41b3de4355555555, 333333333.3333333",
        "41b3de4355555556, 333333333.3333334",
        "41b3de4355555557, 333333333.33333343",
        "becbf647612f3696, -0.0000033333333333333333",
        "43143ff3c1cb0959, 1424953923781206.2",
    })
    void numbers_are_written_as_the_table_says(String bits, String canonical) {
        double number = Double.longBitsToDouble(Long.parseUnsignedLong(bits, HEX));
        String written = new java.math.BigDecimal(number).toString();
        assertThat(canonical(number == 0 ? "-0.0" : written)).isEqualTo(canonical);
    }

    @Source(
            work = "RFC 8785, JSON Canonicalization Scheme (JCS)",
            edition = "June 2020",
            where = "test data published beside it: structures, values, weird, french, unicode",
            kind = Source.Kind.STANDARD,
            accessed = "2026-12-01")
    @ParameterizedTest
    @ValueSource(strings = {"structures", "values", "weird", "french", "unicode"})
    void documents_are_written_as_published(String name) throws IOException {
        assertThat(canonical(text("jcs/" + name + ".in.json")))
                .isEqualTo(text("jcs/" + name + ".out.json"));
    }

    @Source(
            work = "RFC 8785, JSON Canonicalization Scheme (JCS)",
            edition = "June 2020",
            where = "section 3.2.2.3: numbers that no double holds are an error",
            kind = Source.Kind.STANDARD,
            accessed = "2026-12-01")
    @Test
    void a_number_that_no_double_holds_is_refused() {
        assertThatThrownBy(() -> canonical("1e400"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The number 1e400 is too large. Allowed: sizes up to 1.79e308.");
    }

    private static String canonical(String json) {
        return CanonicalJson.write(Json.read("test.json", json));
    }

    private static String text(String name) throws IOException {
        String path = "/org/fandown/reference/record/" + name;
        try (InputStream in = CanonicalJsonReferenceTest.class.getResourceAsStream(path)) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
