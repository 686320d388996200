package org.fandown.reference.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fandown.reference.Source;
import org.fandown.units.AbsolutePressure;
import org.fandown.units.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitFactorsReferenceTest {
    /**
     * Half a unit in the last of the seven digits that the table prints, relative to the factor.
     */
    private static final double PRINTED_TO_7_DIGITS = 5e-7;

    /** A factor that the table prints as exact may differ by the rounding of one division. */
    private static final double ONE_ROUNDING = 2.3e-16;

    @Source(
            work = "NIST Special Publication 811, Guide for the Use of the International System",
            edition = "2008",
            where = "Appendix B.8, factors listed alphabetically",
            kind = Source.Kind.AGENCY,
            accessed = "2026-11-25",
            note = "read at second hand, in works that quote the rows of the table")
    @ParameterizedTest(name = "{2}")
    @CsvSource({
        "PSI,        6.894757E+03, 'pound-force per square inch (psi), to pascal'",
        "PSI_ABS,    6.894757E+03, 'pound-force per square inch (psi), to pascal'",
        "LBF,        4.448222E+00, 'pound-force (lbf), to newton'",
        "CUBIC_INCH, 1.638706E-05, 'cubic inch (in3), to cubic metre'",
        "POUND,      4.535924E-01, 'pound, avoirdupois (lb), to kilogram'",
    })
    void rounded_factors_agree_with_the_table(Unit unit, double factor, String where) {
        assertThat(unit.toBase(1))
                .as(where)
                .isEqualTo(factor, within(PRINTED_TO_7_DIGITS * factor));
    }

    @Source(
            work = "NIST Special Publication 811, Guide for the Use of the International System",
            edition = "2008",
            where = "Appendix B.8, factors printed as exact",
            kind = Source.Kind.AGENCY,
            accessed = "2026-11-25",
            note = "read at second hand, in works that quote the rows of the table")
    @ParameterizedTest(name = "{2}")
    @CsvSource({
        "INCH,       2.54E-02,   'inch (in), to metre'",
        "FOOT,       3.048E-01,  'foot (ft), to metre'",
        "MPH,        4.4704E-01, 'mile per hour (mi/h), to metre per second'",
        "BAR,        1.0E+05,    'bar (bar), to pascal'",
        "LITRE,      1.0E-03,    'liter (L), to cubic metre'",
    })
    void exact_factors_are_exact(Unit unit, double factor, String where) {
        assertThat(unit.toBase(1)).as(where).isEqualTo(factor, within(ONE_ROUNDING * factor));
    }

    @Source(
            work = "NIST Special Publication 811, Guide for the Use of the International System",
            edition = "2008",
            where = "Appendix B.8, degree Fahrenheit: T/K = (t/F + 459.67)/1.8, degree Celsius",
            kind = Source.Kind.AGENCY,
            accessed = "2026-11-25",
            note = "read at second hand, in works that quote the rows of the table")
    @Test
    void temperatures_follow_the_printed_formulas() {
        double oneRoundingNear300 = 1.2e-13;
        assertThat(Unit.FAHRENHEIT.toBase(70))
                .isEqualTo((70 + 459.67) / 1.8, within(oneRoundingNear300));
        assertThat(Unit.CELSIUS.toBase(20)).isEqualTo(20 + 273.15, within(oneRoundingNear300));
    }

    @Source(
            work = "International Yard and Pound Agreement with standard gravity of the CGPM",
            edition = "1959 and 1901",
            where = "1 lb = 0.45359237 kg, 1 in = 0.0254 m, standard gravity = 9.80665 m/s2",
            kind = Source.Kind.CLOSED_FORM,
            accessed = "2026-11-25",
            note = "the two derived units follow from the three definitions by arithmetic")
    @Test
    void pound_force_and_psi_follow_from_their_definitions() {
        double fewRoundings = 1e-15;
        double poundForce = 0.45359237 * 9.80665;

        assertThat(Unit.LBF.toBase(1)).isEqualTo(poundForce, within(fewRoundings * poundForce));
        assertThat(Unit.PSI.toBase(1))
                .isEqualTo(
                        poundForce / (0.0254 * 0.0254),
                        within(fewRoundings * poundForce / (0.0254 * 0.0254)));
    }

    @Source(
            work = "NIST Special Publication 811, Guide for the Use of the International System",
            edition = "2008",
            where = "Appendix B.8, atmosphere, standard (atm): 1.013 25 E+05 Pa",
            kind = Source.Kind.AGENCY,
            accessed = "2026-11-25",
            note = "read at second hand, in works that quote the row of the table")
    @Test
    void the_standard_atmosphere_is_as_printed() {
        assertThat(AbsolutePressure.STANDARD_ATMOSPHERE.pascals()).isEqualTo(1.01325E+05);
    }
}
