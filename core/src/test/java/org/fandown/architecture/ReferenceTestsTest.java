package org.fandown.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import org.fandown.reference.SourcedTests;
import org.junit.jupiter.api.Test;

class ReferenceTestsTest {
    @Test
    void every_reference_test_names_its_source() {
        assertThat(SourcedTests.problems(CoreClasses.referenceTests())).isEmpty();
    }

    @Test
    void tests_without_source_or_with_a_blank_or_undated_one_are_seen() {
        assertThat(SourcedTests.problems(CoreClasses.bad("reference")))
                .containsExactlyInAnyOrder(
                        "unsourced: no @Source",
                        "unsourced_table: no @Source",
                        "unsourced_property: no @Source",
                        "blank: a part of @Source is blank",
                        "undated: accessed is not a date such as 2026-11-25");
    }
}
