package org.fandown.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fandown.app.store.Store;
import org.fandown.contract.store.Arrivals;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackUpCommandTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    @TempDir private Path folder;

    private int run(Path copy) {
        return FandownCommand.run(
                new PrintWriter(out, true),
                new PrintWriter(err, true),
                "back-up",
                copy.toString(),
                "--data",
                folder.resolve("data").toString());
    }

    @Test
    void every_record_is_in_the_copy_which_opens_as_a_store() throws Exception {
        try (Store store = Store.inFolder(folder.resolve("data"))) {
            store.records().keep(Arrivals.of("a", "Truck 4"));
        }
        Path copies = Files.createDirectory(folder.resolve("copies"));

        assertThat(run(copies.resolve("fandown.db"))).isEqualTo(ExitCode.DONE);
        assertThat(out.toString()).contains("Records copied: 1");
        assertThat(Store.inFolder(copies).records().byId("a")).isPresent();
    }

    @Test
    void copy_never_takes_the_place_of_a_file() throws Exception {
        Path there = Files.writeString(folder.resolve("there.db"), "mine");

        assertThat(run(there)).isEqualTo(ExitCode.REFUSED);
        assertThat(err.toString()).contains("not there yet");
        assertThat(Files.readString(there)).isEqualTo("mine");
    }
}
