package org.fandown.contract.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fandown.browser.RunningSite;
import org.fandown.document.Json;
import org.fandown.document.Tree;

/** Somebody with a device that keeps its cookie and the token of its page. */
public final class Person {
    private static final Pattern COOKIE = Pattern.compile("(?<name>[^=]+)=(?<value>[^;]*);.*");
    private static final Pattern TOKEN = Pattern.compile("\"token\":\"([0-9a-f]{64})\"");

    private final RunningSite site;
    private String cookie = "";
    private String token = "";
    private String name = "";

    Person(RunningSite site) {
        this.site = site;
    }

    /** The name typed last to log in. */
    String name() {
        return name;
    }

    String cookie() {
        return cookie;
    }

    String token() {
        return token;
    }

    /** Logs in, which has to succeed. */
    HttpResponse<String> logIn(String name, String password) throws Exception {
        HttpResponse<String> answer = tryLogIn(name, password);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        Matcher given = COOKIE.matcher(answer.headers().firstValue("Set-Cookie").orElseThrow());
        assertThat(given.matches()).isTrue();
        cookie = given.group("name") + "=" + given.group("value");
        Matcher told = TOKEN.matcher(answer.body());
        assertThat(told.find()).isTrue();
        token = told.group(1);
        this.name = name;
        return answer;
    }

    HttpResponse<String> tryLogIn(String name, String password) throws Exception {
        return post("api/log-in", form(name, password));
    }

    /** What the log-in page sends. */
    static String form(String name, String password) {
        return Json.writeCompact(Tree.map().put("name", name).put("password", password).build());
    }

    /** A request with the cookie alone, as any page could make a browser send. */
    HttpRequest.Builder bare(String path) {
        HttpRequest.Builder request = site.request(path);
        return cookie.isEmpty() ? request : request.header("Cookie", cookie);
    }

    /** Asks for something. */
    public HttpResponse<String> get(String path) throws Exception {
        return site.send(bare(path).GET());
    }

    /** Sends something as our own page does. */
    public HttpResponse<String> post(String path, String json) throws Exception {
        return site.send(posting(path, json));
    }

    /** A request as our own page sends it. */
    HttpRequest.Builder posting(String path, String json) {
        HttpRequest.Builder request =
                bare(path)
                        .header("Content-Type", "application/json")
                        .POST(BodyPublishers.ofString(json));
        return token.isEmpty() ? request : request.header("X-Fandown-Token", token);
    }
}
