package org.fandown.contract.people;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/** A request written by hand, for what no client of good manners sends. */
final class RawRequest {
    private static final int PATIENCE = 20_000;

    private RawRequest() {}

    /** Sends lines, and reads the whole answer. */
    static String send(int port, String... lines) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(PATIENCE);
            String request = String.join("\r\n", lines) + "\r\nConnection: close\r\n\r\n";
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            socket.getOutputStream().flush();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
