package org.fandown.app.procedure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.fandown.app.files.DocumentFiles;
import org.fandown.app.files.DocumentText;
import org.fandown.app.files.RulePacks;
import org.fandown.check.PlaceCode;
import org.fandown.document.Fields;
import org.fandown.document.Names;
import org.fandown.document.Node;
import org.fandown.document.Tree;
import org.fandown.procedure.Durations;
import org.fandown.procedure.Examination;
import org.fandown.procedure.Mend;
import org.fandown.procedure.Order;
import org.fandown.procedure.OrderExaminer;
import org.fandown.procedure.OrderReader;
import org.fandown.procedure.Scope;
import org.fandown.procedure.Steps;
import org.fandown.procedure.VehicleDurations;
import org.fandown.procedure.Violation;
import org.fandown.rulebook.RulesInForce;
import org.fandown.vehicle.VehicleReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Orders a person of the trade would send back, and what that person says of them. */
class BadOrdersTest {
    private static final RulePacks PACKS = RulePacks.builtIn();

    /** One bad order with what is expected of the examiner. */
    record Case(Fields fields) {
        @Override
        public String toString() {
            return fields.text("name");
        }
    }

    static Stream<Case> cases() throws IOException {
        try (InputStream in = BadOrdersTest.class.getResourceAsStream("bad-orders.yaml")) {
            String text =
                    new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            List<Node> orders =
                    Fields.of(DocumentText.yaml("bad-orders.yaml", text)).list("orders");
            return orders.stream().map(node -> new Case(Fields.of(node)));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void examiner_says_what_is_wrong_which_step_spoils_it_and_how_to_mend_it(Case bad) {
        Fields fields = bad.fields();

        Examination examination = examine(fields);

        Violation found =
                examination.violations().stream()
                        .filter(v -> v.number() == fields.integer("step", 1, 99))
                        .filter(v -> Names.kebab(v.need().aspect()).equals(fields.text("aspect")))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError(texts(examination)));
        assertThat(Names.kebab(found.need().weight())).isEqualTo(fields.text("kind"));
        assertThat(found.culprit()).as(found.text()).isEqualTo(fields.integer("by", 0, 99));
        assertThat(found.mend().map(Mend::text).orElse("-")).contains(fields.text("mend"));
        assertThat(examination.isSound()).isFalse();
    }

    private static String texts(Examination examination) {
        return examination.violations().stream().map(Violation::text).toList().toString();
    }

    private static Examination examine(Fields fields) {
        PlaceCode place = new PlaceCode(fields.text("place"));
        Path file = Path.of("..", "examples", "vehicles", fields.text("vehicle") + ".yaml");
        RulesInForce rules =
                PACKS.rulebookFor(place)
                        .orElseThrow()
                        .inForce(
                                place,
                                VehicleReader.read(DocumentFiles.read(file)),
                                LocalDate.of(2026, 11, 25));
        Durations durations = VehicleDurations.of(rules.vehicle());
        Tree.MapBuilder order = Tree.map().put("steps", fields.node("steps"));
        fields.optionalText("start").ifPresent(psi -> order.put("start-pressure", psi));
        Order read = new OrderReader(rules, durations).read(order.build());
        return new OrderExaminer(Steps.of(rules, durations, Scope.ASKED), durations).examine(read);
    }
}
