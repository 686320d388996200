package org.fandown.app.web;

import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.util.Locale;
import java.util.Optional;

/**
 * Where the server listens, and under which address people know it.
 *
 * @param address where it listens
 * @param port 1 to 65535, 0 for any that is free
 * @param publicUrl how people reach it, such as {@code https://yard.example}, empty if as it
 *     listens
 * @param proxy the one whose word about the device before it is taken, where there is a public
 *     address; empty for one on this machine
 */
public record Listening(
        InetAddress address, int port, Optional<URI> publicUrl, Optional<InetAddress> proxy) {

    /** On this machine alone. */
    public static Listening here(int port) {
        InetAddress loopback = address("127.0.0.1");
        return new Listening(loopback, port, Optional.empty(), Optional.empty());
    }

    /**
     * An address of this or another machine.
     *
     * @throws IllegalArgumentException if it is none
     */
    public static InetAddress address(String name) {
        try {
            return InetAddress.getByName(name);
        } catch (UnknownHostException e) {
            throw new IllegalArgumentException("'" + name + "' is no address.", e);
        }
    }

    /**
     * A public address.
     *
     * @throws IllegalArgumentException if it is none of the web, or has more than scheme, host and
     *     port
     */
    public static URI publicUrl(String text) {
        URI url = URI.create(text.replaceAll("/$", ""));
        boolean web = "https".equals(url.getScheme()) || "http".equals(url.getScheme());
        String rest = url.getRawPath() + url.getRawQuery() + url.getRawFragment();
        if (!web
                || url.getHost() == null
                || url.getUserInfo() != null
                || !rest.equals("nullnull")) {
            throw new IllegalArgumentException("'" + text + "' is no address of a site.");
        }
        return URI.create(url.toString().toLowerCase(Locale.ROOT));
    }

    /** Whether others than this machine can come to it. */
    public boolean isBeyondThisMachine() {
        return !address.isLoopbackAddress() || publicUrl.isPresent();
    }

    /** Whether people come to it by TLS. */
    public boolean isSecure() {
        return publicUrl.map(url -> "https".equals(url.getScheme())).orElse(false);
    }

    /** Whether this device is the proxy before the server. */
    boolean isProxy(InetAddress peer) {
        return publicUrl.isPresent() && proxy.map(peer::equals).orElseGet(peer::isLoopbackAddress);
    }
}
