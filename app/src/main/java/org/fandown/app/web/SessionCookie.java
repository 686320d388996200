package org.fandown.app.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Optional;
import org.fandown.app.files.Sha256;
import org.fandown.app.store.SessionStore;

/**
 * How a device shows which session is its own: by a cookie that no script can read and no other
 * site can have sent. What changes something also has to show, in a header of ours, a second token
 * that only our own pages are told.
 */
final class SessionCookie {
    /** The header with the second token. */
    static final String HEADER = "X-Fandown-Token";

    private final boolean secure;

    /**
     * Cookies for one way to the server.
     *
     * @param secure whether people come by TLS; then it is never sent another way
     */
    SessionCookie(boolean secure) {
        this.secure = secure;
    }

    /** Browsers hold a name with this beginning to its own site. */
    private String name() {
        return secure ? "__Host-fandown" : "fandown";
    }

    /** The token of the session that the device shows, if any. */
    Optional<String> token(Context ctx) {
        return Optional.ofNullable(ctx.cookie(name())).filter(token -> !token.isEmpty());
    }

    void give(Context ctx, String token) {
        put(ctx, token, (int) SessionStore.WHOLE.toSeconds());
    }

    void takeAway(Context ctx) {
        put(ctx, "", 0);
    }

    private void put(Context ctx, String value, int seconds) {
        ctx.cookie(new Cookie(name(), value, "/", seconds, secure, true, null, SameSite.STRICT));
    }

    /** The second token of a session. From it nobody can tell the first. */
    static String second(String token) {
        return Sha256.of(("second " + token).getBytes(StandardCharsets.UTF_8));
    }

    /** Whether the request shows the second token of its session. */
    static boolean isShown(Context ctx, String token) {
        String shown = Optional.ofNullable(ctx.header(HEADER)).orElse("");
        return MessageDigest.isEqual(
                shown.getBytes(StandardCharsets.UTF_8),
                second(token).getBytes(StandardCharsets.UTF_8));
    }
}
