package org.fandown.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CoreBansTest {
    private static final JavaClasses BAD = CoreClasses.bad("core");

    static Stream<ArchRule> rules() {
        return Stream.of(
                CoreBans.onlyListedPackages(),
                CoreBans.noBannedClasses(),
                CoreBans.noBannedMembers());
    }

    @ParameterizedTest
    @MethodSource("rules")
    void core_keeps_the_rule(ArchRule rule) {
        rule.check(CoreClasses.main());
    }

    @Test
    void core_takes_no_remainder_of_doubles_uses_no_float_and_prints_no_double() {
        assertThat(CoreClasses.main().stream().flatMap(c -> BytecodeBans.problemsIn(c).stream()))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "java.io.File",
                "java.net.URI",
                "java.nio.file.Path",
                "java.util.concurrent.atomic.AtomicLong",
                "java.lang.reflect.Method",
                "java.security.MessageDigest",
                "java.text.DecimalFormat"
            })
    void package_that_is_not_listed_is_seen(String name) {
        assertThat(violations(CoreBans.onlyListedPackages()))
                .anySatisfy(text -> assertThat(text).contains("<" + name + ">"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "java.util.HashMap",
                "java.util.HashSet",
                "java.util.Random",
                "java.util.Locale",
                "java.lang.StrictMath",
                "java.util.StringJoiner",
                "java.time.Clock",
                "java.lang.Thread",
                "java.util.UUID"
            })
    void banned_class_is_seen(String name) {
        assertThat(violations(CoreBans.noBannedClasses()))
                .anySatisfy(text -> assertThat(text).contains(name));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "java.lang.Math.round(double)",
                "java.lang.Math.pow(double, double)",
                "java.lang.System.currentTimeMillis()",
                "java.lang.System.out",
                "java.lang.Class.forName(java.lang.String)",
                "java.lang.String.format(java.lang.String, [Ljava.lang.Object;)",
                "java.lang.String.lines()",
                "java.lang.String.toLowerCase()",
                "java.time.Duration.toSeconds()",
                "java.time.LocalDate.EPOCH",
                "java.time.LocalDate.now()",
                "java.util.Map.copyOf(java.util.Map)",
                "java.util.Set.of(java.lang.Object, java.lang.Object)",
                "java.util.stream.Collectors.toSet()",
                "java.util.List.parallelStream()",
                "java.lang.Double.toString(double)",
                "java.lang.String.hashCode()",
                "java.util.Objects.hash([Ljava.lang.Object;)"
            })
    void banned_member_is_seen(String name) {
        assertThat(violations(CoreBans.noBannedMembers()))
                .anySatisfy(text -> assertThat(text).contains("<" + name + ">"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "BadNumbers.remainder line # remainder of doubles",
                "BadNumbers.remainderInPlace line # remainder of doubles",
                "BadNumbers.field # float",
                "BadNumbers.product line # float",
                "BadNumbers.narrowed line # float",
                "BadNumbers.joined line # double joined to a text, use own formatter",
                "BadNumbers.formatted line # formatted with another conversion than %s",
                "BadNumbers.hidden line # formatted with a format that the method does not show"
            })
    void bad_arithmetic_and_text_in_the_byte_code_are_seen(String expected) {
        assertThat(byteCodeProblems("BadNumbers")).contains(expected);
    }

    @Test
    void good_class_breaks_no_rule() {
        JavaClasses good = CoreClasses.bad("decent");
        assertThat(good).isNotEmpty();
        rules().forEach(rule -> rule.check(good));
        assertThat(good.stream().flatMap(c -> BytecodeBans.problemsIn(c).stream())).isEmpty();
    }

    private static List<String> violations(ArchRule rule) {
        return rule.evaluate(BAD).getFailureReport().getDetails();
    }

    /** Returns the problems of one bad class, with a mark in place of the line numbers. */
    private static List<String> byteCodeProblems(String simpleName) {
        JavaClass bad = BAD.get(CoreClasses.BAD_ROOT + ".core." + simpleName);
        return BytecodeBans.problemsIn(bad).stream()
                .map(text -> text.replaceFirst("( line) [0-9]+:|:", "$1 #"))
                .toList();
    }
}
