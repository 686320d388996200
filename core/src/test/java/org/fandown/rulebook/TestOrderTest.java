package org.fandown.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.fandown.yard.Packs.pack;
import static org.fandown.yard.Packs.rule;

import java.util.List;
import org.fandown.check.Check;
import org.fandown.document.DocumentException;
import org.junit.jupiter.api.Test;

class TestOrderTest {
    private static final String FORTH = "['governor-cut-out', 'air-loss-applied']";
    private static final String BACK = "['air-loss-applied', 'governor-cut-out']";

    @Test
    void turns_are_read_in_order_and_said_in_words() {
        Pack pack = pack("XA", order("a", "", "['build-up', ['governor-cut-out', 'check-valve']]"));

        Limit.Duty duty = (Limit.Duty) pack.rules().get(0).values().get(0).limit();
        assertThat(duty.orders())
                .containsExactly(
                        new TestOrder(
                                TestOrder.Force.BINDING,
                                List.of(
                                        List.of(Check.BUILD_UP),
                                        List.of(Check.GOVERNOR_CUT_OUT, Check.CHECK_VALVE))));
        assertThat(duty.orders().get(0))
                .hasToString("build-up time; then governor cut-out and one-way check valve holds");
    }

    @Test
    void orders_that_contradict_each_other_may_be_for_different_vehicles() {
        Pack pack =
                pack(
                        "XA",
                        order("single", "'applies': {'units': '1'},", FORTH),
                        order("combination", "'applies': {'units': '2+'},", BACK));

        assertThat(pack.rules()).hasSize(2);
    }

    @Test
    void orders_that_contradict_each_other_for_some_vehicle_are_refused() {
        String single = "'applies': {'units': '1'},";

        refused(order("a", "", FORTH), order("b", single, BACK));
        refused(order("a", single, FORTH), order("b", single, BACK));
        refused(order("a", single, FORTH), order("b", "", BACK));
    }

    @Test
    void circle_over_three_orders_is_refused() {
        refused(
                order("a", "", FORTH),
                order("b", "", "['air-loss-applied', 'check-valve']"),
                order("c", "", "['check-valve', 'governor-cut-out']"));
    }

    private static void refused(String... rules) {
        assertThatThrownBy(() -> pack("XA", rules))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("but the binding order of xa.test-order.");
    }

    private static String order(String name, String keys, String turns) {
        return rule(
                "xa.test-order." + name,
                "test-order",
                keys + "'limit': {'duty': 'In this order.', 'binding-order': " + turns + "}");
    }
}
