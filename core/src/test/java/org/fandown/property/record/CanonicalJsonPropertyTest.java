package org.fandown.property.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.fandown.document.Json;
import org.fandown.document.Node;
import org.fandown.document.Tree;
import org.fandown.record.CanonicalJson;
import org.junit.jupiter.api.Test;

class CanonicalJsonPropertyTest {
    private static final int NUMBERS = 20_000;
    private static final long SEED = 20261201;

    @Test
    void a_number_reads_back_as_itself_and_no_shorter_one_does() {
        Random random = new Random(SEED);
        for (int i = 0; i < NUMBERS; i++) {
            double number =
                    i % 2 == 0 ? anyDouble(random) : Math.scalb(1.0, random.nextInt(2000) - 1000);
            String written = canonical(new BigDecimal(number).toString());
            assertThat(Double.parseDouble(written)).isEqualTo(number);
            BigDecimal decimal = new BigDecimal(written).stripTrailingZeros();
            int digits = decimal.precision();
            if (digits > 1) {
                for (RoundingMode mode : List.of(RoundingMode.UP, RoundingMode.DOWN)) {
                    double shorter = decimal.round(new MathContext(digits - 1, mode)).doubleValue();
                    assertThat(shorter).as(written).isNotEqualTo(number);
                }
            }
        }
    }

    private static double anyDouble(Random random) {
        double number = Double.longBitsToDouble(random.nextLong());
        return Double.isFinite(number) && number != 0 ? number : 1.5;
    }

    @Test
    void canonical_text_stays_itself_and_does_not_depend_on_the_order_of_keys() {
        Random random = new Random(SEED);
        for (int i = 0; i < 500; i++) {
            List<String> keys = new ArrayList<>();
            for (int k = 0; k < random.nextInt(8); k++) {
                keys.add(text(random) + k);
            }
            String once = CanonicalJson.write(map(keys));
            Collections.shuffle(keys, random);
            assertThat(CanonicalJson.write(map(keys))).isEqualTo(once);
            assertThat(canonical(once)).isEqualTo(once);
            assertThat(canonical(Json.write(Json.read("a.json", once)))).isEqualTo(once);
        }
    }

    private static Node map(List<String> keys) {
        Tree.MapBuilder map = Tree.map();
        keys.forEach(key -> map.put(key, Tree.list().add(key).add(key.length() / 3.0).add(7)));
        return map.build();
    }

    private static String text(Random random) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < random.nextInt(6); i++) {
            text.appendCodePoint(random.nextBoolean() ? random.nextInt(0x100) : 0x1f600 + i);
        }
        return text.toString();
    }

    private static String canonical(String json) {
        return CanonicalJson.write(Json.read("test.json", json));
    }
}
