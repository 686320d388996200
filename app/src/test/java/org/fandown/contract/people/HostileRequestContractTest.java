package org.fandown.contract.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import org.fandown.app.store.Role;
import org.fandown.contract.serve.Records;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Requests by pages of others, of wrong size and shape, and with more in them than words. */
class HostileRequestContractTest {
    private static final String ADD =
            "{\"name\":\"Mallory\",\"role\":\"site-manager\",\"password\":\"a password of hers\"}";

    @TempDir private Path folder;
    private PeopleSite site;

    @BeforeEach
    void open() {
        site = PeopleSite.in(folder);
    }

    @AfterEach
    void close() {
        site.close();
    }

    private int status(HttpRequest.Builder request) throws Exception {
        return site.site().send(request).statusCode();
    }

    private static HttpRequest.Builder sending(HttpRequest.Builder request, String type) {
        return request.header("Content-Type", type).POST(BodyPublishers.ofString(ADD));
    }

    @Test
    void page_of_another_site_changes_nothing_though_the_browser_sends_the_cookie()
            throws Exception {
        Person manager = site.as(Role.SITE_MANAGER);
        Person other = site.as(Role.DRIVER);
        String path = "api/accounts";
        String token = "X-Fandown-Token";
        List<String> before = site.accounts();
        assertThat(status(sending(manager.bare(path), "application/json"))).isEqualTo(403);
        assertThat(status(sending(manager.bare(path), "text/plain"))).isEqualTo(403);
        assertThat(status(sending(manager.bare(path), "application/x-www-form-urlencoded")))
                .isEqualTo(403);
        assertThat(
                        status(
                                sending(manager.bare(path), "application/json")
                                        .header(token, other.token())))
                .isEqualTo(403);
        assertThat(status(manager.posting(path, ADD).header("Origin", "http://elsewhere.example")))
                .isEqualTo(403);
        assertThat(status(manager.posting(path, ADD).header("Origin", "null"))).isEqualTo(403);
        assertThat(status(manager.posting(path, ADD).header("Sec-Fetch-Site", "cross-site")))
                .isEqualTo(403);
        assertThat(status(manager.bare("api/log-out").POST(BodyPublishers.noBody())))
                .isEqualTo(403);
        assertThat(site.accounts()).isEqualTo(before);
        assertThat(manager.get("api/accounts").statusCode()).isEqualTo(200);
        assertThat(status(manager.bare("api/accounts").header("Sec-Fetch-Site", "same-site").GET()))
                .isEqualTo(403);
    }

    @Test
    void plain_form_logs_nobody_in() throws Exception {
        String form = Person.form("driver", PeopleSite.PASSWORD);
        for (String type : List.of("text/plain", "application/x-www-form-urlencoded")) {
            HttpRequest.Builder request =
                    site.site()
                            .request("api/log-in")
                            .header("Content-Type", type)
                            .POST(BodyPublishers.ofString(form));
            assertThat(status(request)).isEqualTo(415);
        }
        HttpRequest.Builder foreign =
                site.nobody().posting("api/log-in", form).header("Origin", "https://a.example");
        assertThat(status(foreign)).isEqualTo(403);
    }

    @Test
    void name_of_another_site_that_leads_here_is_refused() throws Exception {
        int port = site.site().port();
        assertThat(RawRequest.send(port, "GET /api/me HTTP/1.1", "Host: 127.0.0.1:" + port))
                .startsWith("HTTP/1.1 200");
        for (String host :
                List.of(
                        "evil.example",
                        "evil.example:" + port,
                        "127.0.0.1.evil.example",
                        "192.168.1.20:" + port)) {
            assertThat(RawRequest.send(port, "GET /api/me HTTP/1.1", "Host: " + host))
                    .as(host)
                    .startsWith("HTTP/1.1 403");
        }
    }

    @Test
    void path_leads_to_nothing_but_what_is_served() throws Exception {
        int port = site.site().port();
        for (String path :
                List.of(
                        "/../../../../etc/passwd",
                        "/js/../../../../etc/passwd",
                        "/%2e%2e/%2e%2e/%2e%2e/etc/passwd",
                        "/..%2f..%2f..%2fetc/passwd",
                        "/js/%2e%2e/%2e%2e/org/fandown/app/Main.class",
                        "//etc/passwd",
                        "/\\..\\..\\etc\\passwd",
                        "/fandown.db",
                        "/.fandown/fandown.db",
                        "/api/../api/accounts",
                        "/js/..;/api/accounts",
                        "/api/records/..%2f..%2faccounts",
                        "/API/accounts",
                        "/api//accounts",
                        "/api/accounts/",
                        "/api/accounts;x=1",
                        "/api/accounts%00")) {
            String answer =
                    RawRequest.send(port, "GET " + path + " HTTP/1.1", "Host: 127.0.0.1:" + port);
            assertThat(answer)
                    .as(path)
                    .matches("(?s)HTTP/1.1 40[0134] .*")
                    .doesNotContain("root:", "site-manager", "CAFEBABE");
        }
    }

    private static HttpRequest.BodyPublisher endless(int bytes) {
        // Of unknown length, so that it is sent in pieces.
        return BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(new byte[bytes]));
    }

    @Test
    void too_much_is_refused_however_it_is_sent() throws Exception {
        Person driver = site.as(Role.DRIVER);
        int over = 32 * 1024 * 1024 + 1;
        for (String path : List.of("api/records", "api/vehicle-file?name=a.yaml")) {
            assertThat(refusedForItsSize(driver, path, endless(over))).as(path).isTrue();
            assertThat(refusedForItsSize(driver, path, BodyPublishers.ofByteArray(new byte[over])))
                    .as(path)
                    .isTrue();
        }
        assertThat(refusedForItsSize(site.nobody(), "api/log-in", endless(9 * 1024))).isTrue();
        assertThat(driver.get("api/me").statusCode()).isEqualTo(200);
    }

    /** The server may answer and hang up before all is sent, which some clients call a failure. */
    private boolean refusedForItsSize(Person person, String path, HttpRequest.BodyPublisher body)
            throws Exception {
        try {
            HttpRequest.Builder request =
                    site.site().request(path).header("Content-Type", "application/json");
            if (!person.token().isEmpty()) {
                request.header("Cookie", person.cookie()).header("X-Fandown-Token", person.token());
            }
            return status(request.POST(body)) == 413;
        } catch (IOException e) {
            return true;
        }
    }

    @Test
    void what_is_no_json_is_refused_and_never_fails_the_server() throws Exception {
        Person driver = site.as(Role.DRIVER);
        Person manager = site.as(Role.SITE_MANAGER);
        List<String> bodies =
                List.of(
                        "",
                        "\u0000\u0001\u00ff\u00fe",
                        "{\"records\":",
                        "[".repeat(4000),
                        "{\"records\":5}",
                        "{\"records\":[],\"records\":[]}",
                        "null",
                        "{\"name\":{\"$ne\":1},\"password\":[]}");
        for (String text : bodies) {
            byte[] body = text.getBytes(StandardCharsets.ISO_8859_1);
            for (String path : List.of("api/records", "api/log-in", "api/me/password")) {
                assertThat(status(driver.posting(path, "").POST(BodyPublishers.ofByteArray(body))))
                        .as(path)
                        .isEqualTo(400);
            }
            for (String path :
                    List.of("api/accounts", "api/accounts/2/role", "api/accounts/2/password")) {
                assertThat(status(manager.posting(path, "").POST(BodyPublishers.ofByteArray(body))))
                        .as(path)
                        .isEqualTo(400);
            }
        }
        assertThat(status(driver.posting("api/records", "[".repeat(1_000_000)))).isEqualTo(400);
        assertThat(manager.get("api/audit?before=x").statusCode()).isEqualTo(400);
        assertThat(manager.get("api/audit?before=-1").statusCode()).isEqualTo(400);
        assertThat(manager.get("api/audit?before=99999999999999999999").statusCode())
                .isEqualTo(400);
    }

    @Test
    void words_of_sql_are_words() throws Exception {
        Person manager = site.as(Role.SITE_MANAGER);
        String id = UUID.randomUUID().toString();
        manager.post("api/records", Records.body(Records.record(id)));
        for (String words :
                List.of("'%20or%20'1'='1", "%25'%20--", "x'%29%3B%20drop%20table%20record%3B--")) {
            assertThat(manager.get("api/records?words=" + words).body()).contains("\"records\":[]");
        }
        assertThat(manager.get("api/records/x'%20or%20'1'='1").statusCode()).isEqualTo(404);
        for (String number : List.of("1%20or%201=1", "0", "-1", "x")) {
            assertThat(manager.post("api/accounts/" + number + "/close", "{}").statusCode())
                    .isEqualTo(404);
        }
        for (String name : List.of("driver' --", "' or 1=1 --", "driver\u0000")) {
            HttpResponse<String> answer = site.nobody().tryLogIn(name, PeopleSite.PASSWORD);
            assertThat(answer.statusCode()).as(name).isIn(400, 401);
        }
        String bobby = "Robert'); drop table account;--";
        assertThat(manager.post("api/accounts", ADD.replace("Mallory", bobby)).statusCode())
                .isEqualTo(201);
        assertThat(manager.get("api/accounts").body()).contains(bobby);
        assertThat(site.accounts()).hasSize(6);
        site.nobody().logIn(bobby, "a password of hers");
        assertThat(manager.get("api/records").body()).contains(id);
    }
}
