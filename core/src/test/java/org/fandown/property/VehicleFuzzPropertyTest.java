package org.fandown.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.statistics.Statistics;
import org.fandown.braking.BrakingEstimate;
import org.fandown.braking.Conditions;
import org.fandown.document.DocumentException;
import org.fandown.document.Json;
import org.fandown.document.ListNode;
import org.fandown.document.MapNode;
import org.fandown.document.Node;
import org.fandown.document.Tree;
import org.fandown.vehicle.Vehicle;
import org.fandown.vehicle.VehicleReader;

class VehicleFuzzPropertyTest {
    private static final String FILE =
            """
            {"name": "N", "use": "property", "units": [
              {"kind": "bus", "id": "T", "built": "2018-05", "gross-mass": "11800 kg",
               "registered-mass": "30 t", "odometer": true, "supply": "supply-reservoir",
               "reservoirs": [{"role": "supply", "volume": "1400 in3"}], "seats": 2,
               "compressor": {"displacement": "717.9 cm3", "drive-ratio": 1.0}, "chassis": "car",
               "governor": {"cut-in": "100 psi", "cut-out": "125 psi"}, "brakes": "air",
               "low-air-warning": "flag", "abs": true, "standard": ["fmvss-121"],
               "axles": [
                 {"position": "steer", "brake": "drum", "chamber": "clamp 20", "lining": "strip",
                  "spring-brake": false, "adjuster": "automatic", "arm": "5.5 in",
                  "drum-radius": "7.5 in", "tyre-radius": "19.5 in", "load": "12 000 lb"},
                 {"position": "drive", "brake": "drum", "spring-brake": true, "load": "9 t",
                  "left": {"chamber": "clamp 24 long 3 in"}, "right": {"chamber": "bolt C"}}]},
              {"kind": "trailer", "form": "semi", "id": "B", "axles": [
                 {"brake": "drum", "spring-brake": true, "gross-mass": "9 t", "chamber":
                  {"mount": "other", "type": "X", "marked-limit": "2.2 in",
                   "rated-stroke": "2.75 in", "long-stroke": true}}]}]}
            """;

    /** What a value is replaced by. */
    private static final List<String> WORDS =
            List.of(
                    "",
                    " ",
                    "yes",
                    "no",
                    "air",
                    "none",
                    "air-over-hydraulic",
                    "drum",
                    "disc",
                    "wedge",
                    "steer",
                    "drive",
                    "trailer",
                    "truck",
                    "bus",
                    "dolly",
                    "semi",
                    "full",
                    "clamp 30",
                    "clamp 6",
                    "dd3 30",
                    "rotochamber 50",
                    "bolt F",
                    "clamp 36 3 in",
                    "clamp",
                    "other",
                    "0 in",
                    "-1 in",
                    "1e9 in",
                    "5 in",
                    "1 lb",
                    "999 t",
                    "3 psi",
                    "300 psi",
                    "2018-02-30",
                    "0000-00",
                    "9999-12",
                    "internal",
                    "pads",
                    "9",
                    "-1",
                    "integrated-dryer-unit",
                    "lamp and buzzer",
                    "\u0000",
                    "\ud83d\ude9a");

    @Example
    void the_undamaged_file_is_read() {
        assertThat(VehicleReader.read(Json.read("vehicle.json", FILE)).axleCount()).isEqualTo(3);
    }

    @Property(tries = 10_000)
    void a_damaged_vehicle_file_is_read_or_refused_in_the_documented_way(
            @ForAll @Size(min = 1, max = 4) List<@IntRange(min = 0, max = 200) Integer> places,
            @ForAll("values") Node value) {
        Node tree = Json.read("vehicle.json", FILE);
        for (int place : places) {
            tree = new Damage(place, value).to(tree);
        }
        try {
            Vehicle vehicle = VehicleReader.read(tree);
            assertThat(BrakingEstimate.of(vehicle, Map.of(), Conditions.usual())).isNotNull();
            Statistics.label("outcome").collect("read");
        } catch (DocumentException refused) {
            Statistics.label("outcome").collect("refused");
            assertThat(refused.problem()).isNotBlank();
            assertThat(refused.nextStep()).isNotBlank();
        }
    }

    @Provide
    Arbitrary<Node> values() {
        Arbitrary<Node> words = Arbitraries.of(WORDS).map(Tree::text);
        Arbitrary<Node> others =
                Arbitraries.of(
                        Tree.nothing(),
                        Tree.truth(true),
                        Tree.truth(false),
                        Tree.number(0),
                        Tree.number(-7),
                        Tree.number(48),
                        Tree.list().build(),
                        Tree.map().build());
        return Arbitraries.oneOf(words, words, others);
    }

    /** Replaces one node, counted in the order of the file. */
    private static final class Damage {
        private int left;
        private final Node value;

        Damage(int place, Node value) {
            this.left = place;
            this.value = value;
        }

        Node to(Node node) {
            if (left-- == 0) {
                return value;
            }
            if (node instanceof MapNode map) {
                Tree.MapBuilder copy = Tree.map();
                map.keys().forEach(key -> copy.put(key, to(map.get(key).orElseThrow())));
                return copy.build();
            }
            if (node instanceof ListNode list) {
                List<Node> items = new ArrayList<>();
                list.items().forEach(item -> items.add(to(item)));
                Tree.ListBuilder copy = Tree.list();
                items.forEach(copy::add);
                return copy.build();
            }
            return node;
        }
    }
}
