package org.fandown.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import java.util.ArrayList;
import java.util.List;
import org.fandown.reference.Source;
import org.junit.jupiter.api.Test;
import org.junit.platform.commons.annotation.Testable;

class ReferenceTestsTest {
    @Test
    void every_reference_test_names_its_source() {
        assertThat(testsWithoutSource(CoreClasses.referenceTests())).isEmpty();
    }

    @Test
    void tests_without_source_or_with_a_blank_or_undated_one_are_seen() {
        assertThat(testsWithoutSource(CoreClasses.bad("reference")))
                .containsExactlyInAnyOrder(
                        "unsourced: no @Source",
                        "unsourced_table: no @Source",
                        "unsourced_property: no @Source",
                        "blank: a part of @Source is blank",
                        "undated: accessed is not a date such as 2026-11-25");
    }

    private static List<String> testsWithoutSource(JavaClasses classes) {
        List<String> problems = new ArrayList<>();
        for (JavaClass item : classes) {
            for (JavaMethod method : item.getMethods()) {
                if (method.isMetaAnnotatedWith(Testable.class)) {
                    String problem = problemOf(method);
                    if (!problem.isEmpty()) {
                        problems.add(method.getName() + ": " + problem);
                    }
                }
            }
        }
        return problems;
    }

    private static String problemOf(JavaMethod method) {
        if (!method.isAnnotatedWith(Source.class)) {
            return "no @Source";
        }
        Source source = method.getAnnotationOfType(Source.class);
        if (source.work().isBlank() || source.edition().isBlank() || source.where().isBlank()) {
            return "a part of @Source is blank";
        }
        return source.accessed().matches("20[0-9]{2}-[01][0-9]-[0-3][0-9]")
                ? ""
                : "accessed is not a date such as 2026-11-25";
    }
}
