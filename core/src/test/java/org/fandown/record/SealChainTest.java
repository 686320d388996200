package org.fandown.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.fandown.document.DocumentException;
import org.fandown.document.Json;
import org.junit.jupiter.api.Test;

class SealChainTest {
    private static final int LINKS = 12;
    private static final int CHANGES = 400;

    @Test
    void links_that_follow_each_other_are_sound() {
        assertThat(problems(chain())).isEmpty();
    }

    @Test
    void a_link_reads_back_as_itself_with_the_same_hash() {
        for (Seal seal : chain()) {
            Seal read = Seal.read(Json.read("seal.json", Json.write(seal.document())));
            assertThat(read).isEqualTo(seal);
            assertThat(read.hash()).isEqualTo(seal.hash());
        }
    }

    @Test
    void a_link_left_out_is_missed_and_so_is_one_moved() {
        List<Seal> links = chain();
        for (int i = 0; i + 1 < LINKS; i++) {
            List<Seal> without = new ArrayList<>(links);
            Seal out = without.remove(i);
            assertThat(problems(without)).isNotEmpty();
            without.add(i + 1, out);
            assertThat(problems(without)).isNotEmpty();
        }
    }

    @Test
    void a_link_changed_in_any_letter_is_found_by_the_next_or_is_no_link() {
        List<Seal> links = chain();
        Random random = new Random(7);
        for (int i = 0; i < CHANGES; i++) {
            int at = random.nextInt(LINKS - 1);
            String text = CanonicalJson.write(links.get(at).document());
            int letter = random.nextInt(text.length());
            char other = (char) (text.charAt(letter) ^ 1 + random.nextInt(3));
            String changed = text.substring(0, letter) + other + text.substring(letter + 1);
            Optional<Seal> read = read(changed);
            if (read.isPresent()) {
                List<Seal> copy = new ArrayList<>(links);
                copy.set(at, read.get());
                assertThat(problems(copy)).as(changed).isNotEmpty();
            }
        }
    }

    @Test
    void what_is_no_seal_is_refused_with_what_is_allowed() {
        String seal = CanonicalJson.write(chain().get(0).document());
        assertThatThrownBy(
                        () ->
                                Seal.read(
                                        Json.read(
                                                "seal.json",
                                                seal.replace("\"number\":1", "\"number\":0"))))
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("a number from 1 on and hashes of 64 hexadecimal digits");
    }

    private static Optional<Seal> read(String text) {
        try {
            return Optional.of(Seal.read(Json.read("seal.json", text)));
        } catch (DocumentException e) {
            return Optional.empty();
        }
    }

    private static List<String> problems(List<Seal> links) {
        SealChain chain = new SealChain();
        List<String> problems = new ArrayList<>();
        links.forEach(link -> chain.take(link).ifPresent(problems::add));
        return problems;
    }

    private static List<Seal> chain() {
        List<Seal> links = new ArrayList<>();
        TreeMap<String, String> last = new TreeMap<>();
        String site = "";
        for (int i = 1; i <= LINKS; i++) {
            String vehicle = "FD" + i % 3;
            Seal seal =
                    new Seal(
                            i,
                            "2026-12-01T08:00:0" + i % 10 + ".000Z",
                            Sha256.of("record " + i),
                            i % 4 == 0 ? "" : Sha256.of("judgement " + i),
                            i % 2 == 0 ? "" : "ada",
                            vehicle,
                            site,
                            last.getOrDefault(vehicle, ""));
            site = seal.hash();
            last.put(vehicle, site);
            links.add(seal);
        }
        return links;
    }
}
