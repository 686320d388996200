package org.fandown.contract.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fandown.app.store.Role;
import org.fandown.app.web.Listening;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Logging in, being logged in and logging out, with those in mind who want to be somebody else. */
class SessionContractTest {
    /**
     * Without a hash an answer takes some ms; with it, hundreds. Noise stays within this factor.
     */
    private static final double NOISE = 2.5;

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

    private static String cookieOf(HttpResponse<String> answer) {
        return answer.headers().firstValue("Set-Cookie").orElseThrow();
    }

    @Test
    void cookie_is_kept_from_scripts_and_from_other_sites() throws Exception {
        HttpResponse<String> answer = site.nobody().tryLogIn("driver", PeopleSite.PASSWORD);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(List.of(cookieOf(answer).split("; ", -1)))
                .contains("Path=/", "HttpOnly", "SameSite=Strict")
                .doesNotContain("Secure")
                .noneMatch(part -> part.startsWith("Domain"));
        assertThat(cookieOf(answer)).matches("fandown=[A-Za-z0-9_-]{43};.*");
        assertThat(answer.headers().firstValue("Cache-Control")).contains("no-store");
        assertThat(answer.body())
                .contains("\"name\":\"driver\"", "\"role\":\"driver\"")
                .doesNotContain(cookieOf(answer).substring(8, 51), "argon2");
    }

    @Test
    void cookie_goes_by_tls_alone_where_people_come_by_tls(@TempDir Path other) throws Exception {
        Listening here = Listening.here(0);
        Listening at =
                new Listening(
                        here.address(),
                        0,
                        Optional.of(Listening.publicUrl("https://yard.example/")),
                        Optional.empty());
        try (PeopleSite secure = PeopleSite.in(other, at)) {
            HttpResponse<String> answer = secure.nobody().tryLogIn("driver", PeopleSite.PASSWORD);
            assertThat(cookieOf(answer)).matches("__Host-fandown=[A-Za-z0-9_-]{43};.*");
            assertThat(List.of(cookieOf(answer).split("; ", -1)))
                    .contains("Secure", "Path=/", "HttpOnly", "SameSite=Strict");
        }
    }

    @Test
    void session_is_new_at_every_log_in_whatever_the_device_showed_before() throws Exception {
        String chosen = "A".repeat(43);
        HttpResponse<String> answer =
                site.site()
                        .send(
                                site.nobody()
                                        .posting(
                                                "api/log-in",
                                                Person.form("driver", PeopleSite.PASSWORD))
                                        .header("Cookie", "fandown=" + chosen));
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(cookieOf(answer)).doesNotContain(chosen);
        var shown = site.site().request("api/records").header("Cookie", "fandown=" + chosen);
        assertThat(site.site().send(shown.GET()).statusCode()).isEqualTo(401);

        Person driver = site.as(Role.DRIVER);
        String first = driver.cookie();
        assertThat(driver.get("api/records").statusCode()).isEqualTo(200);
        driver.logIn("mechanic", PeopleSite.PASSWORD);
        assertThat(driver.cookie()).isNotEqualTo(first);
        var before = site.site().request("api/records").header("Cookie", first);
        assertThat(site.site().send(before.GET()).statusCode()).isEqualTo(401);
    }

    @Test
    void who_logs_out_is_out() throws Exception {
        Person driver = site.as(Role.DRIVER);
        Person elsewhere = site.as(Role.DRIVER);
        assertThat(driver.get("api/me").body()).contains("\"name\":\"driver\"");
        HttpResponse<String> out = driver.post("api/log-out", "");
        assertThat(out.statusCode()).isEqualTo(204);
        assertThat(cookieOf(out)).startsWith("fandown=;").contains("Expires=Thu, 01 Jan 1970");
        assertThat(driver.get("api/records").statusCode()).isEqualTo(401);
        assertThat(driver.get("api/me").body()).isEqualTo("{\"accounts\":true}");
        assertThat(elsewhere.get("api/records").statusCode()).isEqualTo(200);
    }

    @Test
    void all_sessions_of_an_account_end_with_its_password_role_or_closing() throws Exception {
        Person manager = site.as(Role.SITE_MANAGER);
        Map<String, String> changes =
                Map.of(
                        "password", "{\"password\":\"eight loose gravel stones\"}",
                        "role", "{\"role\":\"mechanic\"}",
                        "close", "{}");
        List<Role> roles = List.of(Role.LEARNER, Role.DRIVER, Role.INSTRUCTOR);
        int at = 2;
        for (Map.Entry<String, String> change : changes.entrySet()) {
            Person here = site.as(roles.get(at - 2));
            Person there = site.as(roles.get(at - 2));
            String path = "api/accounts/" + at++ + "/" + change.getKey();
            assertThat(manager.post(path, change.getValue()).statusCode()).isEqualTo(204);
            for (Person person : List.of(here, there)) {
                assertThat(person.get("api/records").statusCode()).as(path).isEqualTo(401);
            }
        }
        assertThat(manager.get("api/accounts").statusCode()).isEqualTo(200);
    }

    @Test
    void own_password_is_changed_by_who_knows_the_old_one_and_ends_other_sessions()
            throws Exception {
        Person driver = site.as(Role.DRIVER);
        Person elsewhere = site.as(Role.DRIVER);
        String fresh = "eight loose gravel stones";
        String right = "{\"old\":\"" + PeopleSite.PASSWORD + "\",\"new\":\"" + fresh + "\"}";
        String wrong = "{\"old\":\"something else\",\"new\":\"" + fresh + "\"}";
        String weak = "{\"old\":\"" + PeopleSite.PASSWORD + "\",\"new\":\"short\"}";
        assertThat(driver.post("api/me/password", wrong).statusCode()).isEqualTo(403);
        assertThat(driver.post("api/me/password", weak).body()).contains("10 to 200");
        HttpResponse<String> changed = driver.post("api/me/password", right);
        assertThat(changed.statusCode()).isEqualTo(200);
        assertThat(cookieOf(changed)).doesNotContain(driver.cookie());
        assertThat(driver.get("api/records").statusCode()).isEqualTo(401);
        assertThat(elsewhere.get("api/records").statusCode()).isEqualTo(401);
        assertThat(site.nobody().tryLogIn("driver", PeopleSite.PASSWORD).statusCode())
                .isEqualTo(401);
        site.nobody().logIn("driver", fresh);
    }

    @Test
    void unknown_name_wrong_password_and_closed_account_cannot_be_told_apart() throws Exception {
        site.as(Role.SITE_MANAGER).post("api/accounts/5/close", "{}");
        List<HttpResponse<String>> answers =
                List.of(
                        site.nobody().tryLogIn("driver", "not the password"),
                        site.nobody().tryLogIn("nobody of this name", "not the password"),
                        site.nobody().tryLogIn("mechanic", PeopleSite.PASSWORD));
        for (HttpResponse<String> answer : answers) {
            assertThat(answer.statusCode()).isEqualTo(401);
            assertThat(answer.body()).isEqualTo(answers.get(0).body());
            assertThat(answer.headers().map().keySet())
                    .isEqualTo(answers.get(0).headers().map().keySet());
        }
    }

    @Test
    void unknown_name_takes_as_long_as_a_wrong_password() throws Exception {
        double known = Double.MAX_VALUE;
        double unknown = Double.MAX_VALUE;
        for (int i = 0; i < 4; i++) {
            known = Math.min(known, time("driver"));
            unknown = Math.min(unknown, time("nobody of this name"));
        }
        assertThat(unknown / known).isBetween(1 / NOISE, NOISE);
    }

    private double time(String name) throws Exception {
        long start = System.nanoTime();
        assertThat(site.nobody().tryLogIn(name, "not the password").statusCode()).isEqualTo(401);
        return Duration.ofNanos(System.nanoTime() - start).toMillis();
    }

    @Test
    void who_tries_often_has_to_wait_also_with_the_right_password() throws Exception {
        for (String name : List.of("driver", "nobody of this name")) {
            List<Integer> statuses = new ArrayList<>();
            HttpResponse<String> last = site.nobody().tryLogIn(name, "not the password");
            while (last.statusCode() == 401 && statuses.size() < 10) {
                statuses.add(last.statusCode());
                last = site.nobody().tryLogIn(name, "not the password");
            }
            assertThat(statuses).as(name).hasSizeBetween(5, 6);
            assertThat(last.statusCode()).isEqualTo(429);
            assertThat(last.headers().firstValue("Retry-After").orElseThrow()).matches("[1-9]");
        }
        List<Integer> right = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            right.add(site.nobody().tryLogIn("DRIVER", "not the password").statusCode());
        }
        assertThat(right).contains(429);
        site.as(Role.MECHANIC);
    }

    @Test
    void who_asks_without_end_is_held_back_and_others_are_not() throws Exception {
        Person driver = site.as(Role.DRIVER);
        Person other = site.as(Role.MECHANIC);
        int held = 0;
        for (int i = 0; i < 2000 && held == 0; i++) {
            held = driver.get("api/me").statusCode() == 429 ? i : 0;
        }
        assertThat(held).isGreaterThanOrEqualTo(300);
        assertThat(other.get("api/me").statusCode()).isEqualTo(200);
    }

    @Test
    void audit_trail_tells_who_came_and_who_tried_and_never_a_password() throws Exception {
        site.nobody().tryLogIn("driver", "not the password");
        site.nobody().tryLogIn("typed my passphrase here", "x");
        Person driver = site.as(Role.DRIVER);
        driver.post("api/log-out", "");
        assertThat(site.audit())
                .extracting(e -> e.who() + "|" + e.act() + "|" + e.about() + "|" + e.result())
                .containsExactly(
                        "driver|log-out|driver|done",
                        "|log-in|driver|done",
                        "|log-in||refused",
                        "|log-in|driver|refused");
        assertThat(site.audit()).allMatch(e -> e.source().equals("127.0.0.1"));
        assertThat(site.audit().toString())
                .doesNotContain("passphrase", "gravel", driver.token(), driver.cookie());
    }
}
