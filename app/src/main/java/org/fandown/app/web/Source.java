package org.fandown.app.web;

import io.javalin.http.Context;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Pattern;

/** From where a request comes. */
final class Source {
    private static final Pattern DIGITS = Pattern.compile("[0-9a-fA-F:.]{3,45}");

    /** Bytes of an IPv6 address that are one household's: it can take any below them. */
    private static final int HOUSEHOLD = 8;

    private Source() {}

    /**
     * The address of the device. Before a proxy it is the last that the proxy names; what stands
     * before it, the device may have made up.
     */
    static String of(Context ctx, Listening at) {
        String peer = ctx.ip();
        String named = Optional.ofNullable(ctx.header("X-Forwarded-For")).orElse("");
        String last = named.substring(named.lastIndexOf(',') + 1).strip();
        boolean told = DIGITS.matcher(last).matches() && at.isProxy(Listening.address(peer));
        return told ? last : peer;
    }

    /** What is counted as one when somebody asks too often. */
    static String counted(String source) {
        InetAddress address = Listening.address(source);
        return address instanceof Inet6Address
                ? HexFormat.of().formatHex(Arrays.copyOf(address.getAddress(), HOUSEHOLD))
                : address.getHostAddress();
    }
}
