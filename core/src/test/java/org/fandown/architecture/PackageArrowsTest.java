package org.fandown.architecture;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class PackageArrowsTest {
    private static final ArrowTable TABLE = ArrowTable.of(ArrowTable.CORE);

    @Test
    void packages_of_the_core_use_only_what_the_table_allows() {
        TABLE.rule(CoreClasses.ROOT).check(CoreClasses.main());
    }

    @Test
    void packages_of_the_core_form_no_cycle() {
        noCycle(CoreClasses.ROOT).check(CoreClasses.main());
    }

    @Test
    void table_names_only_its_own_packages_and_has_no_cycle() {
        for (String name : TABLE.packages()) {
            assertThat(TABLE.packages()).containsAll(TABLE.usableBy(name));
            assertThat(reachableFrom(name)).as("reachable from %s", name).doesNotContain(name);
        }
    }

    @Test
    void arrows_that_must_never_be_are_not_in_the_table() {
        assertThat(reachableFrom("air")).doesNotContain("rulebook");
        assertThat(reachableFrom("judgement")).doesNotContain("air", "practice", "procedure");
        assertThat(TABLE.usableBy("vehicle")).doesNotContain("check");
        assertThat(TABLE.usableBy("referee")).doesNotContain("air");
    }

    @Test
    void arrow_that_is_not_in_the_table_is_seen() {
        assertThat(violations(CoreClasses.bad("air", "rulebook")))
                .anySatisfy(text -> assertThat(text).contains("not in the table", "Pipe", "Limit"));
    }

    @Test
    void package_that_is_not_in_the_table_is_seen() {
        assertThat(violations(CoreClasses.bad("garage")))
                .singleElement()
                .asString()
                .contains("Shed is in a package that is not in the table");
    }

    @Test
    void cycle_of_packages_is_seen() {
        JavaClasses loop = CoreClasses.bad("loop");
        assertThat(noCycle(CoreClasses.BAD_ROOT + ".loop").evaluate(loop).hasViolation()).isTrue();
    }

    private static List<String> violations(JavaClasses classes) {
        return TABLE.rule(CoreClasses.BAD_ROOT).evaluate(classes).getFailureReport().getDetails();
    }

    private static ArchRule noCycle(String root) {
        return slices().matching(root + ".(*)..").should().beFreeOfCycles().allowEmptyShould(true);
    }

    private static Set<String> reachableFrom(String start) {
        Set<String> seen = new TreeSet<>();
        Deque<String> open = new ArrayDeque<>(TABLE.usableBy(start));
        while (!open.isEmpty()) {
            String next = open.pop();
            if (seen.add(next)) {
                open.addAll(TABLE.usableBy(next));
            }
        }
        return seen;
    }
}
