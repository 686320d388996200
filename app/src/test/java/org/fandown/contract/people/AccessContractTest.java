package org.fandown.contract.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.fandown.app.store.Role;
import org.fandown.contract.serve.Records;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every request by everybody. Whom it is for is typed here from what the site promises its people:
 * N nobody, L learner, D driver, I instructor, M mechanic, S site manager.
 */
class AccessContractTest {
    private static final String ANYONE = "NLDIMS";
    private static final String ALL = "LDIMS";
    private static final String BUT_LEARNERS = "DIMS";
    private static final String MANAGER = "S";
    private static final String KEPT = "0b7e3a52-93d1-4c0e-9a65-0d5f6f0a1c01";

    private static final String PASSWORD = "{\"password\":\"eight loose gravel stones\"}";

    private record Row(String allowed, String method, String path, String body) {}

    /** The sixth account is there to be changed. */
    private static final List<Row> TABLE =
            List.of(
                    new Row(ANYONE, "GET", "", ""),
                    new Row(ANYONE, "GET", "index.html", ""),
                    new Row(ANYONE, "GET", "js/main.js", ""),
                    new Row(ANYONE, "GET", "data/packs.json", ""),
                    new Row(ANYONE, "GET", "sw.js", ""),
                    new Row(ANYONE, "GET", "api/health", ""),
                    new Row(ANYONE, "GET", "api/me", ""),
                    new Row(ALL, "GET", "api/records?words=x", ""),
                    new Row(ALL, "POST", "api/records", "{\"records\":[]}"),
                    new Row(ALL, "POST", "api/vehicle-file?name=a.json", "{}"),
                    new Row(ALL, "POST", "api/me/password", "{}"),
                    new Row(BUT_LEARNERS, "GET", "api/records/" + KEPT, ""),
                    new Row(BUT_LEARNERS, "GET", "api/records/" + KEPT + "/report.pdf", ""),
                    new Row(BUT_LEARNERS, "GET", "api/records/" + KEPT + "/seal", ""),
                    new Row(BUT_LEARNERS, "GET", "api/records/" + KEPT + "/defects", ""),
                    new Row(BUT_LEARNERS, "GET", "api/records/" + KEPT + "/code.svg", ""),
                    new Row(BUT_LEARNERS, "GET", "api/records/" + KEPT + "/hand-over.zip", ""),
                    new Row(BUT_LEARNERS, "GET", "api/defects?plate=x", ""),
                    new Row(MANAGER, "GET", "api/accounts", ""),
                    new Row(MANAGER, "GET", "api/audit", ""),
                    new Row(MANAGER, "POST", "api/accounts/6/role", "{\"role\":\"mechanic\"}"),
                    new Row(MANAGER, "POST", "api/accounts/6/password", PASSWORD),
                    new Row(MANAGER, "POST", "api/accounts/6/close", "{}"),
                    new Row("", "GET", "api/nothing", ""),
                    new Row("", "PUT", "api/records", "{}"),
                    new Row("", "DELETE", "api/records/" + KEPT, ""),
                    new Row("", "DELETE", "api/accounts/6", ""));

    @TempDir private static Path folder;
    private static PeopleSite site;
    private static final Map<Role, Person> PEOPLE = new EnumMap<>(Role.class);

    @BeforeAll
    static void open() throws Exception {
        site = PeopleSite.in(folder);
        for (Role role : Role.values()) {
            PEOPLE.put(role, site.as(role));
        }
        Person manager = PEOPLE.get(Role.SITE_MANAGER);
        assertThat(manager.post("api/records", Records.body(Records.record(KEPT))).body())
                .contains("\"kept\":\"new\"");
        manager.post(
                "api/accounts",
                "{\"name\":\"Spare\",\"role\":\"driver\",\"password\":\""
                        + PeopleSite.PASSWORD
                        + "\"}");
        assertThat(site.accounts()).hasSize(6);
    }

    @AfterAll
    static void close() {
        site.close();
    }

    private static List<Character> each(String who) {
        return who.chars().mapToObj(c -> (char) c).toList();
    }

    private static Person person(char who) {
        return switch (who) {
            case 'L' -> PEOPLE.get(Role.LEARNER);
            case 'D' -> PEOPLE.get(Role.DRIVER);
            case 'I' -> PEOPLE.get(Role.INSTRUCTOR);
            case 'M' -> PEOPLE.get(Role.MECHANIC);
            case 'S' -> PEOPLE.get(Role.SITE_MANAGER);
            default -> site.nobody();
        };
    }

    private static HttpResponse<String> ask(char who, Row row) throws Exception {
        var request = person(who).posting(row.path(), row.body());
        var body = BodyPublishers.ofString(row.body());
        return site.site().send(request.method(row.method(), body));
    }

    /** Denied answers by their meaning; any other says that the request was worked on. */
    private static String outcome(HttpResponse<String> answer) {
        return switch (answer.statusCode()) {
            case 401 -> answer.body().contains("Nobody is logged in") ? "denied" : "worked on";
            case 403, 404, 405 -> "denied";
            default -> "worked on";
        };
    }

    @Test
    void everybody_may_do_what_the_table_says_and_nothing_else() throws Exception {
        List<String> wrong = new ArrayList<>();
        for (Row row : TABLE) {
            for (char who : each(ANYONE)) {
                List<String> before = site.accounts();
                HttpResponse<String> answer = ask(who, row);
                boolean may = row.allowed().indexOf(who) >= 0;
                if (!outcome(answer).equals(may ? "worked on" : "denied")) {
                    wrong.add(who + " " + row + ": " + answer.statusCode() + answer.body());
                }
                if (!may && !site.accounts().equals(before)) {
                    wrong.add(who + " " + row + " changed something");
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(site.accounts().get(5)).startsWith("Spare, MECHANIC20");
    }

    @Test
    void accounts_are_added_by_site_managers_alone() throws Exception {
        for (char who : each(ANYONE)) {
            String body =
                    "{\"name\":\"New %s\",\"role\":\"learner\",\"password\":\"%s\"}"
                            .formatted(who, PeopleSite.PASSWORD);
            int status = person(who).post("api/accounts", body).statusCode();
            assertThat(status).isEqualTo(who == 'S' ? 201 : who == 'N' ? 401 : 403);
        }
        assertThat(site.accounts())
                .contains("New S, LEARNER")
                .noneMatch(line -> line.startsWith("New ") && !line.startsWith("New S"));
    }

    @Test
    void inspections_are_kept_of_all_but_learners() throws Exception {
        for (char who : each(ALL)) {
            String id = UUID.randomUUID().toString();
            String answer =
                    person(who).post("api/records", Records.body(Records.record(id))).body();
            boolean may = BUT_LEARNERS.indexOf(who) >= 0;
            assertThat(answer)
                    .as(String.valueOf(who))
                    .contains(may ? "\"kept\":\"new\"" : "\"kept\":\"not-allowed\"");
            assertThat(person('S').get("api/records/" + id).statusCode())
                    .isEqualTo(may ? 200 : 404);
            if (may) {
                assertThat(person('S').get("api/records/" + id + "/seal").body())
                        .contains("\"sender\":\"" + person(who).name() + "\"");
            }
            assertThat(site.audit().get(0).toString())
                    .contains(id, "record-keep", may ? "new" : "not allowed");
        }
    }

    @Test
    void learner_finds_no_record_of_others() throws Exception {
        assertThat(person('D').get("api/records").body()).contains(KEPT);
        assertThat(person('L').get("api/records").body())
                .contains("\"records\":[]")
                .doesNotContain(KEPT);
    }

    @Test
    void asking_for_the_head_alone_gives_nothing_away() throws Exception {
        var head = BodyPublishers.noBody();
        assertThat(
                        site.site()
                                .send(site.nobody().bare("api/accounts").method("HEAD", head))
                                .statusCode())
                .isEqualTo(403);
    }
}
