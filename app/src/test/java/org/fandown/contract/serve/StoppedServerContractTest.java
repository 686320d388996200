package org.fandown.contract.serve;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.fandown.document.Fields;
import org.fandown.document.Json;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The server is asked to stop while a record is on its way to it. */
class StoppedServerContractTest {
    private static final String ID = "0b7e3a52-93d1-4c0e-9a65-0d5f6f0a1c01";

    /** 128 and the number of the signal, as shells count. */
    private static final int BY_SIGTERM = 143;

    /** By then a request is in work also on a busy machine, ms. */
    private static final int LET_IN = 3000;

    @TempDir private Path folder;

    @Test
    void request_in_work_is_answered_and_then_the_server_stops() throws Exception {
        Path log = folder.resolve("log.jsonl");
        ServeProcess server = ServeProcess.start(folder, "--log", log.toString());
        server.get("api/records?words=Ines%20Marlowe");
        byte[] body = Records.body(Records.record(ID)).getBytes(StandardCharsets.UTF_8);
        try (Socket socket = open(server.uri(""), body.length)) {
            OutputStream out = socket.getOutputStream();
            out.write(body, 0, body.length / 2);
            out.flush();
            Thread.sleep(LET_IN);
            server.terminate();
            Thread.sleep(500);
            out.write(body, body.length / 2, body.length - body.length / 2);
            out.flush();
            String answer =
                    new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(answer).startsWith("HTTP/1.1 200").contains("\"kept\":\"new\"");
        }
        assertThat(server.rest()).last().isEqualTo("Fandown stopped.");
        assertThat(server.exit()).isEqualTo(BY_SIGTERM);
        assertLogged(Files.readAllLines(log));
        ServeProcess again = ServeProcess.start(folder);
        assertThat(again.get("api/records/" + ID).statusCode()).isEqualTo(200);
        again.kill();
    }

    private static Socket open(URI where, int length) throws IOException {
        Socket socket = new Socket(where.getHost(), where.getPort());
        String head =
                "POST /api/records HTTP/1.1\r\nHost: "
                        + where.getAuthority()
                        + "\r\nContent-Type: application/json\r\nConnection: close\r\n"
                        + "Content-Length: "
                        + length
                        + "\r\n\r\n";
        socket.getOutputStream().write(head.getBytes(StandardCharsets.US_ASCII));
        return socket;
    }

    /** One line of JSON each, in order, and nothing that anybody searched for or sent. */
    private static void assertLogged(List<String> lines) {
        assertThat(lines)
                .extracting(
                        line -> {
                            Fields fields = Fields.of(Json.read("log", line));
                            return fields.text("event")
                                    + " "
                                    + fields.optionalText("method").orElse("");
                        })
                .containsExactly("started ", "request GET", "request POST", "stopped ");
        assertThat(lines.get(2))
                .contains("\"path\":\"/api/records\"", "\"status\":200", "\"ms\":", "\"bytes\":");
        assertThat(String.join("\n", lines)).doesNotContain("Marlowe", "words", ID);
    }
}
