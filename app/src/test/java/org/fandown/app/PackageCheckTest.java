package org.fandown.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.fandown.browser.RunningSite;
import org.fandown.contract.serve.Records;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code fandown verify} says of a package that was handed over. */
class PackageCheckTest {
    private static final String FIRST = "0b7e3a52-93d1-4c0e-9a65-0d5f6f0a3c01";

    @TempDir private Path folder;

    @Test
    void a_package_is_sound_as_handed_over_and_no_file_of_it_can_be_changed_or_left_out()
            throws Exception {
        Map<String, byte[]> files = handedOver();
        assertThat(verified(files)).as("as handed over").isEqualTo(0);
        for (String name : files.keySet()) {
            if (name.equals("READ-ME.txt")) {
                continue;
            }
            Map<String, byte[]> changed = new LinkedHashMap<>(files);
            byte[] bytes = files.get(name).clone();
            bytes[bytes.length / 2] ^= 1;
            changed.put(name, bytes);
            assertThat(verified(changed)).as(name + " changed").isEqualTo(1);
            changed.remove(name);
            assertThat(verified(changed)).as(name + " left out").isNotEqualTo(0);
        }
    }

    private int verified(Map<String, byte[]> files) throws IOException {
        Path zip = folder.resolve("package.zip");
        Files.write(zip, zip(files));
        return Cli.run("verify", zip.toString(), "--data", folder.toString()).exit();
    }

    private Map<String, byte[]> handedOver() throws Exception {
        try (RunningSite site = RunningSite.in(folder)) {
            site.post("api/records", Records.body(Records.record(FIRST)));
            HttpResponse<byte[]> answer =
                    site.send(
                            site.request("api/records/" + FIRST + "/hand-over.zip"),
                            HttpResponse.BodyHandlers.ofByteArray());
            return files(answer.body());
        }
    }

    private static Map<String, byte[]> files(byte[] zip) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                files.put(entry.getName(), in.readAllBytes());
            }
        }
        return files;
    }

    private static byte[] zip(Map<String, byte[]> files) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                zip.write(file.getValue());
                zip.closeEntry();
            }
        }
        return out.toByteArray();
    }
}
