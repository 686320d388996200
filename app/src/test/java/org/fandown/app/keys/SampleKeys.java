package org.fandown.app.keys;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Keys as a site may bring them, made by the keytool of the Java library. */
public final class SampleKeys {
    private static final String PASSWORD = "sesame";

    private SampleKeys() {}

    /** An elliptic key for which another vouches. */
    public static SiteKey ellipticWithChain(Path folder) throws IOException, InterruptedException {
        Path store = folder.resolve("own.p12");
        Path request = folder.resolve("own.csr");
        Path answer = folder.resolve("own.pem");
        pair(store, "root", "CN=Voucher", "-ext", "bc:c");
        pair(store, "own", "CN=Own yard");
        keytool(store, "-certreq", "-alias", "own", "-file", request.toString());
        keytool(
                store,
                "-gencert",
                "-alias",
                "root",
                "-infile",
                request.toString(),
                "-outfile",
                answer.toString(),
                "-rfc");
        keytool(store, "-importcert", "-alias", "own", "-file", answer.toString());
        keytool(store, "-delete", "-alias", "root");
        return SiteKeyFile.open(store, PASSWORD.toCharArray());
    }

    private static void pair(Path store, String alias, String name, String... more)
            throws IOException, InterruptedException {
        List<String> command =
                new java.util.ArrayList<>(
                        List.of(
                                "-genkeypair",
                                "-alias",
                                alias,
                                "-dname",
                                name,
                                "-keyalg",
                                "EC",
                                "-groupname",
                                "secp256r1",
                                "-validity",
                                "3650"));
        command.addAll(List.of(more));
        keytool(store, command.toArray(new String[0]));
    }

    private static void keytool(Path store, String... arguments)
            throws IOException, InterruptedException {
        List<String> command =
                new java.util.ArrayList<>(
                        List.of(
                                Path.of(System.getProperty("java.home"), "bin", "keytool")
                                        .toString()));
        command.addAll(List.of(arguments));
        command.addAll(List.of("-keystore", store.toString(), "-storepass", PASSWORD, "-noprompt"));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said =
                new String(
                        process.getInputStream().readAllBytes(),
                        java.nio.charset.StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
    }
}
