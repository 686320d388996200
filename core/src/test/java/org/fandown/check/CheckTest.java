package org.fandown.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CheckTest {
    @Test
    void every_check_is_found_by_its_text_form() {
        for (Check check : Check.values()) {
            assertThat(Check.byId(check.id())).contains(check);
        }
    }

    @Test
    void a_text_that_names_no_check_finds_none() {
        assertThat(Check.byId("GOVERNOR_CUT_OUT")).isEmpty();
        assertThat(Check.byId("governor cut-out")).isEmpty();
    }

    @Test
    void text_forms_are_lower_case_with_hyphens() {
        assertThat(Check.AIR_LOSS_APPLIED.id()).isEqualTo("air-loss-applied");
    }
}
