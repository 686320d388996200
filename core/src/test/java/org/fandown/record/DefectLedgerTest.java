package org.fandown.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.fandown.document.DocumentException;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.record.DefectStory.State;
import org.junit.jupiter.api.Test;

class DefectLedgerTest {
    private static final String REPORT = "a1";

    private final DefectLedger ledger = new DefectLedger();

    @Test
    void defects_stand_as_bad_as_the_report_says() {
        ledger.reported(REPORT, report());
        assertThat(states())
                .containsExactly(
                        State.GROUNDED, State.REPORTED, State.OUT_OF_SERVICE, State.REPORTED);
        assertThat(ledger.open())
                .extracting(DefectStory::text)
                .containsExactly(
                        "4R: Applied push-rod stroke",
                        "lamps: cracked lens",
                        "Low-air warning",
                        "hoses: chafed");
        assertThat(ledger.open())
                .extracting(s -> s.earlier().since().toString())
                .containsOnly("2026-11-30");
    }

    @Test
    void a_repair_settles_what_it_names_and_nothing_else() {
        ledger.reported(REPORT, report());
        ledger.settled("b2", "2026-11-30T10:00Z", settlement(REPORT, 1, "repaired"));
        ledger.settled("b3", "2026-11-30T11:00Z", settlement(REPORT, 4, "not-needed"));
        ledger.settled("b4", "2026-11-30T11:00Z", settlement("another", 3, "repaired"));
        assertThat(states())
                .containsExactly(
                        State.REPAIRED, State.REPORTED, State.OUT_OF_SERVICE, State.NOT_NEEDED);
        assertThat(ledger.of(REPORT).get(2).events()).isEmpty();
        assertThat(ledger.defects(REPORT)).hasValue(4);
        assertThat(ledger.defects("another")).isEmpty();
        assertThat(ledger.stories().get(0).events())
                .extracting(DefectStory.Event::by)
                .containsExactly("B. Hale, Yard shop");
    }

    @Test
    void the_next_driver_reviews_what_is_settled_and_a_review_settles_nothing() {
        ledger.reported(REPORT, report());
        ledger.settled("b2", "2026-11-30T10:00Z", settlement(REPORT, 1, "repaired"));
        ledger.reviewed("c1", "2026-12-01T06:00Z", new Review(REPORT, "C. Lind"));
        assertThat(states())
                .containsExactly(
                        State.REVIEWED, State.REPORTED, State.OUT_OF_SERVICE, State.REPORTED);
    }

    @Test
    void what_a_correction_replaces_counts_no_longer() {
        ledger.reported(REPORT, report());
        ledger.settled("b2", "2026-11-30T10:00Z", settlement(REPORT, 1, "repaired"));
        ledger.corrected("b2");
        assertThat(states().get(0)).isEqualTo(State.GROUNDED);
        ledger.corrected(REPORT);
        assertThat(ledger.stories()).isEmpty();
    }

    @Test
    void a_settlement_that_names_nothing_or_one_twice_is_refused() {
        assertThatThrownBy(() -> settlement("{'of':'a1','by':'B','settled':[]}"))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("No defect is named");
        String item = "{'defect':1,'outcome':'repaired','work':'w'}";
        assertThatThrownBy(
                        () ->
                                settlement(
                                        "{'of':'a1','by':'B','settled':["
                                                + item
                                                + ","
                                                + item
                                                + "]}"))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("This is here twice");
    }

    private List<State> states() {
        return ledger.stories().stream().map(DefectStory::state).toList();
    }

    private static Settlement settlement(String of, int defect, String outcome) {
        return settlement(
                "{'of':'"
                        + of
                        + "','by':'B. Hale','firm':'Yard shop','settled':[{'defect':"
                        + defect
                        + ",'outcome':'"
                        + outcome
                        + "','work':'new slack adjuster'}]}");
    }

    private static Settlement settlement(String json) {
        return Settlement.read(json(json));
    }

    private static Node report() {
        return json(
                "{'moment':'2026-11-30T06:40-05:00','defects':["
                        + "{'component':'x','wheel':'4R','severity':'major','rule':'r','text':'Applied push-rod stroke'},"
                        + "{'component':'lamps','severity':'minor','text':'cracked lens'},"
                        + "{'component':'y','severity':'major','rule':'r','out-of-service':true,'text':'Low-air warning'},"
                        + "{'component':'hoses','severity':'not-stated','text':'chafed'}]}");
    }

    private static Node json(String text) {
        return Json.read("test.json", text.replace('\'', '"'));
    }
}
