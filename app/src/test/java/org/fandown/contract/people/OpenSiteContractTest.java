package org.fandown.contract.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fandown.app.cli.ExitCode;
import org.fandown.app.cli.FandownCommand;
import org.fandown.app.store.Role;
import org.fandown.app.web.Listening;
import org.fandown.app.web.OpenSiteException;
import org.fandown.browser.RunningSite;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A site is open to this machine, or to people with accounts; never to everybody. */
class OpenSiteContractTest {
    @TempDir private Path folder;

    private static Listening at(String address, String url, String proxy) {
        return new Listening(
                Listening.address(address),
                0,
                Optional.of(url).filter(u -> !u.isEmpty()).map(Listening::publicUrl),
                Optional.of(proxy).filter(p -> !p.isEmpty()).map(Listening::address));
    }

    @Test
    void nobody_can_come_from_beyond_before_there_is_an_account() {
        for (Listening open :
                List.of(at("0.0.0.0", "", ""), at("127.0.0.1", "https://yard.example", ""))) {
            assertThatThrownBy(() -> RunningSite.in(folder, open))
                    .isInstanceOf(OpenSiteException.class)
                    .hasMessageContaining("fandown account add NAME --role site-manager");
        }
        for (List<String> option :
                List.of(
                        List.of("--listen", "0.0.0.0"),
                        List.of("--listen", "::"),
                        List.of("--public-url", "https://yard.example"))) {
            assertThat(serve(option)).contains("fandown account add NAME --role site-manager");
        }
    }

    private String serve(List<String> options) {
        StringWriter err = new StringWriter();
        List<String> args =
                new ArrayList<>(List.of("serve", "--port", "0", "--data", folder.toString()));
        args.addAll(options);
        int exit =
                FandownCommand.run(
                        new PrintWriter(new StringWriter()),
                        new PrintWriter(err, true),
                        args.toArray(String[]::new));
        assertThat(exit).isEqualTo(ExitCode.REFUSED);
        return err.toString();
    }

    @Test
    void address_that_is_none_is_refused_with_what_is_allowed() {
        assertThat(serve(List.of("--listen", "no such place"))).contains("192.168.1.20");
        assertThat(serve(List.of("--proxy", "no such place"))).contains("192.168.1.20");
        for (String bad :
                List.of(
                        "yard.example",
                        "ftp://a.example",
                        "https://a.example/x",
                        "https://u@a.example",
                        "https://a b")) {
            assertThat(serve(List.of("--public-url", bad)))
                    .as(bad)
                    .contains("https://yard.example");
        }
        assertThat(Listening.publicUrl("https://Yard.example:8443/"))
                .isEqualTo(URI.create("https://yard.example:8443"));
    }

    @Test
    void site_without_accounts_is_not_open_through_a_proxy_either() throws Exception {
        try (RunningSite alone = RunningSite.in(folder)) {
            int port = alone.port();
            String host = "Host: 127.0.0.1:" + port;
            assertThat(RawRequest.send(port, "GET /api/records HTTP/1.1", host))
                    .startsWith("HTTP/1.1 200");
            assertThat(
                            RawRequest.send(
                                    port,
                                    "GET /api/records HTTP/1.1",
                                    host,
                                    "X-Forwarded-For: 192.0.2.7"))
                    .startsWith("HTTP/1.1 403")
                    .contains("--public-url");
        }
    }

    @Test
    void site_without_accounts_asks_nobody_to_log_in() throws Exception {
        try (RunningSite alone = RunningSite.in(folder)) {
            assertThat(alone.get("api/me").body()).isEqualTo("{\"accounts\":false}");
            assertThat(alone.post("api/log-in", Person.form("a", "b")).statusCode()).isEqualTo(409);
            assertThat(alone.get("api/accounts").body()).isEqualTo("{\"accounts\":[]}");
        }
    }

    @Test
    void first_account_closes_the_site_to_all_others_at_once() throws Exception {
        try (RunningSite alone = RunningSite.in(folder)) {
            String body = "{\"name\":\"Ines\",\"role\":\"%s\",\"password\":\"seven loose stones\"}";
            assertThat(alone.post("api/accounts", body.formatted("driver")).body())
                    .contains("site manager");
            assertThat(alone.get("api/records").statusCode()).isEqualTo(200);
            assertThat(alone.post("api/accounts", body.formatted("site-manager")).statusCode())
                    .isEqualTo(201);
            assertThat(alone.get("api/records").statusCode()).isEqualTo(401);
            assertThat(alone.post("api/accounts", body.formatted("driver")).statusCode())
                    .isEqualTo(401);
            assertThat(alone.get("").statusCode()).isEqualTo(200);
            new Person(alone).logIn("Ines", "seven loose stones");
        }
    }

    @Test
    void public_site_answers_its_own_name_and_notes_where_people_come_from() throws Exception {
        try (PeopleSite site = PeopleSite.in(folder, at("127.0.0.1", "https://yard.example", ""))) {
            int port = site.site().port();
            assertThat(me(port, "yard.example", "https://yard.example")).startsWith("HTTP/1.1 200");
            assertThat(me(port, "127.0.0.1:" + port, "https://yard.example"))
                    .startsWith("HTTP/1.1 200");
            assertThat(me(port, "yard.example", "http://yard.example")).startsWith("HTTP/1.1 403");
            assertThat(me(port, "yard.example", "https://evil.example")).startsWith("HTTP/1.1 403");
            assertThat(me(port, "evil.example", "https://evil.example")).startsWith("HTTP/1.1 403");
            logInFrom(site, "198.51.100.1, 192.0.2.7");
            assertThat(site.audit().get(0).source()).isEqualTo("192.0.2.7");
            logInFrom(site, "<script>");
            assertThat(site.audit().get(0).source()).isEqualTo("127.0.0.1");
        }
    }

    private static String me(int port, String host, String origin) throws Exception {
        return RawRequest.send(port, "GET /api/me HTTP/1.1", "Host: " + host, "Origin: " + origin);
    }

    private static void logInFrom(PeopleSite site, String forwarded) throws Exception {
        var request =
                site.nobody()
                        .posting("api/log-in", Person.form("driver", PeopleSite.PASSWORD))
                        .header("X-Forwarded-For", forwarded);
        assertThat(site.site().send(request).statusCode()).isEqualTo(200);
    }

    @Test
    void word_of_a_device_that_is_not_the_proxy_is_not_taken(@TempDir Path other) throws Exception {
        try (PeopleSite site =
                PeopleSite.in(other, at("127.0.0.1", "https://yard.example", "192.0.2.1"))) {
            logInFrom(site, "198.51.100.1");
            assertThat(site.audit().get(0).source()).isEqualTo("127.0.0.1");
        }
        try (PeopleSite site = PeopleSite.in(folder)) {
            logInFrom(site, "198.51.100.1");
            assertThat(site.audit().get(0).source()).isEqualTo("127.0.0.1");
        }
    }

    @Test
    void site_on_every_address_of_its_machine_is_reached_by_digits_and_by_log_in()
            throws Exception {
        try (PeopleSite site = PeopleSite.in(folder, at("0.0.0.0", "", ""))) {
            int port = site.site().port();
            assertThat(me(port, "192.168.1.20:" + port, "http://192.168.1.20:" + port))
                    .startsWith("HTTP/1.1 200");
            assertThat(me(port, "evil.example:" + port, "http://evil.example:" + port))
                    .startsWith("HTTP/1.1 403");
            assertThat(site.nobody().get("api/records").statusCode()).isEqualTo(401);
            assertThat(site.as(Role.DRIVER).get("api/records").statusCode()).isEqualTo(200);
        }
    }
}
