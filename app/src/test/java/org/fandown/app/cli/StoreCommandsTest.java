package org.fandown.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.util.ArrayList;
import java.util.List;
import org.fandown.app.Main;
import org.fandown.app.store.Store;
import org.fandown.contract.store.Arrivals;
import org.fandown.contract.store.TestPostgres;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verbs that move, copy, restore and check what is kept. */
class StoreCommandsTest {
    private static final int RECORDS = 3;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    @TempDir private Path folder;

    private int run(String... args) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return FandownCommand.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    private String filled() {
        Path data = folder.resolve("data");
        try (Store store = Store.inFolder(data)) {
            for (int i = 0; i < RECORDS; i++) {
                store.records().keep(Arrivals.of("r" + i, "Truck 4"));
            }
        }
        return data.toString();
    }

    @Test
    void store_is_moved_to_a_server_once_and_backed_up_and_restored_from_there() {
        String data = filled();
        String url = TestPostgres.database();
        String copy = folder.resolve("copy.db").toString();
        String fresh = folder.resolve("fresh").toString();

        assertThat(run("move-store", "--data", data, "--to", url)).isEqualTo(ExitCode.DONE);
        assertThat(out.toString()).contains("Records moved: 3").doesNotContain("password=only");
        assertThat(run("move-store", "--data", data, "--to", url)).isEqualTo(ExitCode.REFUSED);
        assertThat(err.toString()).contains("is not empty").contains("Next: ");
        assertThat(run("back-up", copy, "--database", url)).isEqualTo(ExitCode.DONE);
        assertThat(out.toString()).contains("Records copied: 3");
        assertThat(run("restore", copy, "--data", fresh)).isEqualTo(ExitCode.DONE);
        assertThat(out.toString()).contains("Records restored: 3");
        assertThat(run("restore", copy, "--data", fresh)).isEqualTo(ExitCode.REFUSED);
        assertThat(run("check-store", "--data", fresh)).isEqualTo(ExitCode.DONE);
        assertThat(out.toString()).contains("Records in order: 3").contains("All is as it was");
    }

    @Test
    void check_says_what_is_broken_and_misses_a_seal_that_was_noted() throws Exception {
        String data = filled();
        assertThat(run("check-store", "--data", data)).isEqualTo(ExitCode.DONE);
        String seal = out.toString().replaceAll("(?s).*Last seal: ([0-9a-f]{64}).*", "$1");
        assertThat(run("check-store", "--data", data, "--noted", seal)).isEqualTo(ExitCode.DONE);

        alter(data, "drop trigger record_never_goes", "drop trigger seal_never_goes");
        alter(data, "delete from record where number = 3", "delete from seal where number = 3");
        assertThat(run("check-store", "--data", data)).isEqualTo(ExitCode.DONE);
        assertThat(run("check-store", "--data", data, "--noted", seal)).isEqualTo(ExitCode.BROKEN);
        assertThat(out.toString()).contains("not there");

        alter(data, "drop trigger record_never_changes", "update record set verdict = 'x'");
        assertThat(run("check-store", "--data", data)).isEqualTo(ExitCode.BROKEN);
        assertThat(out.toString()).contains("Broken. Record 1: ");
    }

    private static void alter(String data, String... sql) throws Exception {
        try (var by = DriverManager.getConnection("jdbc:sqlite:" + data + "/fandown.db");
                var statement = by.createStatement()) {
            for (String each : sql) {
                statement.execute(each);
            }
        }
    }

    @Test
    void environment_names_the_database_so_that_no_password_is_in_the_list_of_processes()
            throws Exception {
        String url = TestPostgres.database();
        try (Store store = Store.at(url)) {
            store.records().keep(Arrivals.of("a", "Truck 4"));
        }
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-cp", System.getProperty("java.class.path")));
        command.addAll(List.of(Main.class.getName(), "check-store"));
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().put(StoreOptions.VARIABLE, url);
        Process process = builder.redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isEqualTo(ExitCode.DONE);
        assertThat(said)
                .contains("Store: jdbc:postgresql://127.0.0.1:")
                .contains("Records in order: 1")
                .doesNotContain("password");
    }

    @Test
    void move_without_a_place_to_go_is_refused() {
        assertThat(run("move-store", "--data", filled())).isEqualTo(ExitCode.REFUSED);
        assertThat(err.toString()).contains("Where to?");
    }
}
