package org.fandown.property.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.fandown.trace.CandumpReader.Times;
import org.fandown.trace.Heard;

class CandumpPropertyTest {
    /** Bytes a damaged log is likely to have, so that damage gets past the first letter. */
    private static final byte[] LIKELY =
            "0123456789ABCDEFabcdef ()[]#._-:RTX\t\r\n\n\n"
                    .getBytes(java.nio.charset.StandardCharsets.US_ASCII);

    private static final byte[] LOG = log();

    private static byte[] log() {
        try {
            byte[] all = Files.readAllBytes(Path.of("..", "examples", "recordings", "tsc1.log"));
            return Arrays.copyOf(all, 6000);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Property(tries = 300)
    void a_log_says_the_same_however_it_is_cut(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 300) int size) {
        byte[] log = damaged(new SplittableRandom(seed));
        Heard whole = Heard.inPieces(log, log.length, Times.AS_WRITTEN);

        Heard cut = Heard.inPieces(log, size, Times.AS_WRITTEN);

        assertThat(cut.frames).isEqualTo(whole.frames);
        assertThat(cut.others).isEqualTo(whole.others);
        assertThat(cut.values).isEqualTo(whole.values);
    }

    @Property(tries = 1_000)
    void nothing_makes_the_reader_throw_and_no_value_is_out_of_range(@ForAll long seed) {
        SplittableRandom lot = new SplittableRandom(seed);
        byte[] log = new byte[lot.nextInt(2000)];
        for (int i = 0; i < log.length; i++) {
            log[i] =
                    lot.nextInt(20) == 0
                            ? (byte) lot.nextInt(256)
                            : LIKELY[lot.nextInt(LIKELY.length)];
        }

        Heard heard = Heard.inPieces(log, 1 + lot.nextInt(500), Times.SINCE_LAST);

        for (Heard.Value value : heard.values) {
            assertThat(value.value()).isBetween(-273.0, 8031.875);
        }
    }

    /** The log with some bytes changed, some lines doubled up. */
    private static byte[] damaged(SplittableRandom lot) {
        byte[] log = LOG.clone();
        int changes = lot.nextInt(200);
        for (int i = 0; i < changes; i++) {
            log[lot.nextInt(log.length)] = LIKELY[lot.nextInt(LIKELY.length)];
        }
        return log;
    }
}
