package org.fandown.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import org.fandown.app.files.RulePacks;
import org.fandown.app.keys.SiteKey;
import org.fandown.app.keys.SiteKeyFile;
import org.fandown.app.store.Store;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RouteTableTest {
    @TempDir private Path folder;

    private SiteKey key() {
        return SiteKeyFile.openOrMake(folder, "Demo yard", Optional.empty());
    }

    @Test
    void every_request_the_server_answers_is_in_the_table_of_who_may() {
        try (Store store = Store.inFolder(folder);
                SiteServer server =
                        SiteServer.start(
                                Listening.here(0), RulePacks.builtIn(), store, this::key)) {
            assertThat(server.routes()).contains("GET /", "POST /api/log-in", "GET /js/main.js");
            assertThat(server.routes())
                    .allSatisfy(
                            route -> {
                                int space = route.indexOf(' ');
                                String method = route.substring(0, space);
                                String pattern = route.substring(space + 1);
                                assertThat(server.access().entry(method, pattern)).isPresent();
                            });
            assertThat(server.access().entry("GET", "/api/forgotten")).isEmpty();
            assertThat(server.access().entry("POST", "/js/main.js")).isEmpty();
        }
    }

    @Test
    void only_what_has_no_secrets_is_for_anyone() {
        Access access = new Access(Set.of());
        assertThat(access.entry("GET", "/api/records").orElseThrow().allows(Optional.empty()))
                .isFalse();
        assertThat(access.entry("GET", "/api/me").orElseThrow().allows(Optional.empty())).isTrue();
    }
}
