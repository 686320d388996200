package org.fandown.app.web;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.Header;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Which pages may ask: our own alone. Another page that is open in the same browser can neither
 * write here nor use a name of its own that leads here.
 */
final class Origins {
    private static final Pattern HERE =
            Pattern.compile("(127\\.0\\.0\\.1|localhost|\\[::1])(:\\d{1,5})?");

    /** No other site can make a name of digits lead here. */
    private static final Pattern DIGITS =
            Pattern.compile("(\\d{1,3}(\\.\\d{1,3}){3}|\\[[0-9a-f:.]+])(:\\d{1,5})?");

    /** What a browser says of a request by our own page, or typed by a person. */
    private static final List<String> OWN = List.of("same-origin", "none");

    /** What only a proxy says. */
    private static final List<String> FORWARDED =
            List.of("Forwarded", "X-Forwarded-For", "X-Forwarded-Host", "X-Forwarded-Proto");

    private final Listening at;

    Origins(Listening at) {
        this.at = at;
    }

    /** Refuses what was not asked by a page of this server. */
    void require(Context ctx) {
        String host = header(ctx, Header.HOST).toLowerCase(Locale.ROOT);
        String origin = header(ctx, Header.ORIGIN).toLowerCase(Locale.ROOT);
        String site = header(ctx, "Sec-Fetch-Site");
        boolean own =
                origin.isEmpty()
                        || isPublic(origin)
                        || (isDirect(host) && origin.equals("http://" + host));
        if (!(isDirect(host) || isPublicHost(host))
                || !own
                || !(site.isEmpty() || OWN.contains(site))) {
            throw new ForbiddenResponse("Only pages of this server may ask.");
        }
    }

    /** Refuses what came through a proxy, where everybody at this machine may do all. */
    static void requireDirect(Context ctx) {
        if (FORWARDED.stream().anyMatch(name -> ctx.header(name) != null)) {
            throw new ForbiddenResponse(
                    "This came through a proxy, but the site has no accounts. Next: add the account"
                            + " of a site manager, and start the pages with --public-url.");
        }
    }

    private boolean isDirect(String host) {
        return HERE.matcher(host).matches()
                || (!at.address().isLoopbackAddress() && DIGITS.matcher(host).matches());
    }

    private boolean isPublicHost(String host) {
        return at.publicUrl().map(url -> url.getRawAuthority().equals(host)).orElse(false);
    }

    private boolean isPublic(String origin) {
        return at.publicUrl().map(url -> url.toString().equals(origin)).orElse(false);
    }

    private static String header(Context ctx, String name) {
        return Optional.ofNullable(ctx.header(name)).orElse("");
    }
}
