package org.fandown.browser;

import com.microsoft.playwright.impl.driver.Driver;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * The TypeScript compiler over modules of the pages. It makes nothing: it tells what does not agree
 * with the types in the comments. It is run by the Node.js that comes with Playwright.
 */
final class TypeCompiler {
    /** The module the pages belong to. */
    static final Path BROWSER = Path.of("..", "browser").toAbsolutePath().normalize();

    /** What the pages are checked by. */
    static final Path CONFIG = BROWSER.resolve("tsconfig.json");

    private static final Path COMPILER =
            BROWSER.resolve(Path.of("target", "js-check", "lib", "typescript", "lib", "tsc.js"));

    private TypeCompiler() {}

    /** The lines that begin a complaint, each with its file and place. */
    static List<String> complaints(Path config) throws IOException, InterruptedException {
        Process compiler =
                new ProcessBuilder(
                                node(), COMPILER.toString(), "--pretty", "false", "-p", "" + config)
                        .directory(config.getParent().toFile())
                        .redirectErrorStream(true)
                        .start();
        String told = new String(compiler.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        List<String> complaints = told.lines().filter(line -> line.contains("error TS")).toList();
        if ((compiler.waitFor() == 0) != complaints.isEmpty()) {
            throw new IllegalStateException("The compiler of types could not work: " + told);
        }
        return complaints;
    }

    private static String node() {
        Path folder =
                Driver.ensureDriverInstalled(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1"), false)
                        .driverDir();
        boolean windows = System.getProperty("os.name").startsWith("Windows");
        return folder.resolve(windows ? "node.exe" : "node").toString();
    }
}
