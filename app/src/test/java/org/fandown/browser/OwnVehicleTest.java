package org.fandown.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Vehicles of one's own, from a file and by the form, in the yard, in practice and for rules. */
class OwnVehicleTest {
    private static final Path FILE =
            Path.of("..", "examples", "vehicles", "gravel-truck-manual-adjusters.yaml");

    @TempDir private Path folder;

    @ParameterizedTest
    @EnumSource(Screens.class)
    void vehicle_of_a_file_or_the_form_is_used_everywhere(Screens screen) throws Exception {
        RunningSite site = RunningSite.in(folder.resolve("store"));
        String address = site.address();
        String text = Files.readString(FILE);
        try (Chromium chromium = new Chromium();
                BrowserContext context = chromium.profile(folder.resolve("profile"), screen)) {
            Page page = context.newPage();
            YardWalk yard = new YardWalk(page);
            yard.open(address);
            page.navigate(address + "#/vehicles");
            refuse(page, text.replace("clamp 30", "clamp 31"));
            take(page, "own.yaml", text.replaceFirst("name: .*", "name: Sand truck 5"));
            page.waitForSelector("text=Sand truck 5 is kept");
            site.close();
            build(yard, "Training tractor 3");
            page.navigate(address + "#/yard");
            page.locator("select[name=vehicle]").selectOption("Training tractor 3");
            yard.button("Begin").click();
            page.waitForSelector("progress");
            assertThat(page.locator("main").textContent()).contains("Training tractor 3");
            page.navigate(address + "#/rules");
            page.locator("select[name=vehicle]").selectOption("Sand truck 5");
            page.waitForSelector("section.sheet");
            page.navigate(address + "#/practice");
            page.locator("select[name=vehicle]").selectOption("Training tractor 3");
            page.locator("select[name=hidden]").selectOption("none");
            yard.button("Practise").click();
            page.waitForSelector("h1:has-text('Training tractor 3')");
        }
    }

    /**
     * What is wrong in a file is said as the command line says it, with line and what is allowed.
     */
    private static void refuse(Page page, String text) {
        take(page, "bad.yaml", text);
        Locator alert = page.getByRole(com.microsoft.playwright.options.AriaRole.ALERT);
        alert.waitFor();
        assertThat(alert.textContent())
                .containsPattern("bad\\.yaml:\\d+:\\d+: .*clamp 31.*Allowed: .*Next: ");
    }

    private static void take(Page page, String name, String text) {
        page.locator("input[type=file]")
                .setInputFiles(
                        new FilePayload(name, "text/yaml", text.getBytes(StandardCharsets.UTF_8)));
    }

    private static void build(YardWalk yard, String name) {
        Page page = yard.page();
        page.locator("input[name=name]").fill(name);
        page.locator("select[name=kind]").selectOption("tractor");
        page.locator("select[name=drive]").selectOption("2");
        page.locator("select[name=trailers]").selectOption("1");
        page.locator("input[name=trailerVolume]").fill("48");
        yard.button("Keep this vehicle").click();
        page.waitForSelector("text=" + name + " is kept");
    }
}
