package org.fandown.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class FandownCommandTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void help_is_printed() {
        assertThat(run("--help")).isEqualTo(ExitCode.DONE);
        assertThat(out.toString()).contains("Usage: fandown");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void version_is_the_one_of_the_build() {
        assertThat(run("--version")).isEqualTo(ExitCode.DONE);
        assertThat(out.toString()).containsPattern("^fandown [0-9]+\\.[0-9]+\\.[0-9]+");
    }

    @Test
    void unknown_verb_is_refused_with_advice() {
        assertThat(run("jugde")).isEqualTo(ExitCode.REFUSED);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString())
                .contains("fandown: There is no verb 'jugde'.", "Next: 'fandown --help'");
    }

    @Test
    void unknown_option_is_refused_with_advice() {
        assertThat(run("--colour")).isEqualTo(ExitCode.REFUSED);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString())
                .contains("There is no place for '--colour'.", "Next: 'fandown --help'");
    }

    private int run(String... args) {
        return FandownCommand.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }
}
