package org.fandown.app.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Map;
import java.util.TreeMap;
import org.fandown.app.files.ProgramFiles;
import org.fandown.app.files.RulePacks;
import org.fandown.app.files.Sha256;

/**
 * Every file of the site, in memory: what the browser module brings, what {@link DemoYard} makes,
 * and the list of all of them that a device keeps them by. Immutable.
 */
final class SiteFiles {
    static final String FOLDER = "/org/fandown/browser/site/";
    static final String LIST = "/site-list.js";
    private static final int VERSION_DIGITS = 16;

    private final Map<String, SiteFile> files = new TreeMap<>();
    private final String version;

    private SiteFiles(Map<String, byte[]> contents) {
        contents.forEach((path, bytes) -> files.put(path, SiteFile.of(path, bytes)));
        version = version(files);
        byte[] list = list().getBytes(StandardCharsets.UTF_8);
        files.put(LIST, SiteFile.of(LIST, list));
    }

    /** All files, with these rule packs. */
    static SiteFiles with(RulePacks packs) {
        Map<String, byte[]> contents = new TreeMap<>();
        for (String name : ProgramFiles.below(FOLDER)) {
            contents.put("/" + name, ProgramFiles.bytes(FOLDER + name));
        }
        contents.put("/data/packs.json", utf8(DemoYard.packs(packs)));
        contents.put("/data/vehicles.json", utf8(DemoYard.vehicles()));
        contents.put("/data/scenarios.json", utf8(DemoYard.scenarios()));
        return new SiteFiles(contents);
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** All files by path; the path begins with a slash. */
    Map<String, SiteFile> all() {
        return files;
    }

    /** A name that changes whenever any file does. */
    String version() {
        return version;
    }

    private static String version(Map<String, SiteFile> files) {
        MessageDigest digest = Sha256.begin();
        files.forEach(
                (path, file) -> {
                    digest.update(utf8(path));
                    digest.update(file.bytes());
                });
        return Sha256.end(digest).substring(0, VERSION_DIGITS);
    }

    private String list() {
        StringBuilder text =
                new StringBuilder("self.SITE = { version: '" + version + "', files: [");
        for (String path : files.keySet()) {
            boolean kept = !path.equals("/sw.js") && !path.endsWith("/LICENSE");
            text.append(kept ? "'" + path + "'," : "");
        }
        return text.append("] };\n").toString();
    }
}
