package org.fandown.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A push rod out of its limit: severity by the place's rule, note and photo, from yard to PDF. */
class DefectJourneyTest {
    private static final String NOTE = "worn clevis pin, to be seen by a technician";

    @TempDir private Path folder;

    @ParameterizedTest
    @EnumSource(Screens.class)
    void what_is_wrong_travels_with_note_and_photo(Screens screen) throws Exception {
        try (RunningSite site = RunningSite.in(folder);
                Chromium chromium = new Chromium();
                Browser browser = chromium.launch();
                BrowserContext context = browser.newContext(screen.options())) {
            Page page = context.newPage();
            YardWalk yard = new YardWalk(page);
            yard.open(site.address());
            yard.begin("straight-truck");
            while (page.getByText("Applied stroke at each wheel").count() == 0) {
                yard.next();
            }
            page.getByLabel("2L").first().fill("2 3/4");
            page.getByLabel("2L").first().blur();
            yard.walkToTheEnd();
            Locator defect = page.locator(".defects li").first();
            assertThat(defect.textContent()).contains("2L", "major");
            defect.locator("input[name^=note-]").fill(NOTE);
            defect.locator("input[name^=note-]").blur();
            defect.locator("input[type=file]")
                    .setInputFiles(new FilePayload("p.png", "image/png", picture()));
            defect.locator("img.photo").waitFor();
            yard.sign("Ines Marlowe");
            page.waitForSelector("text=kept by the server");
            page.locator(".defects img.photo").first().waitFor();
            assertThat(page.locator("main").textContent()).contains(NOTE);
            String id = page.url().substring(page.url().lastIndexOf('/') + 1);
            assertPrinted(
                    site.send(
                            site.request("api/records/" + id + "/report.pdf"),
                            HttpResponse.BodyHandlers.ofByteArray()));
        }
    }

    private static void assertPrinted(HttpResponse<byte[]> report) throws IOException {
        try (PDDocument document = Loader.loadPDF(report.body())) {
            assertThat(new PDFTextStripper().getText(document)).contains("clevis pin", "Photos");
            int pictures = 0;
            for (PDPage each : document.getPages()) {
                for (COSName name : each.getResources().getXObjectNames()) {
                    pictures += each.getResources().isImageXObject(name) ? 1 : 0;
                }
            }
            assertThat(pictures).isPositive();
        }
    }

    private static byte[] picture() throws IOException {
        BufferedImage image = new BufferedImage(1600, 1200, BufferedImage.TYPE_INT_RGB);
        var pen = image.createGraphics();
        pen.setColor(Color.ORANGE);
        pen.fillRect(200, 200, 800, 600);
        pen.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        return out.toByteArray();
    }
}
