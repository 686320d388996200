package org.fandown.app.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ArchiveTest {
    /** The figures of the profile have five places; those of the Java library are of 16 bits. */
    private static final float ROUNDED = 0.0005f;

    /** Two in the usual run, for time; all with {@code -Dfandown.verapdf=all}. */
    static Stream<String> examples() {
        List<String> all = Samples.examples();
        return System.getProperty("fandown.verapdf", "").equals("all")
                ? all.stream()
                : Stream.of("nunavut-limit-from-memory.yaml", "us-coach-in-order.yaml");
    }

    @ParameterizedTest
    @MethodSource("examples")
    void report_of_an_example_keeps_what_it_claims(String example) {
        PrintedReport report = PrintedReport.of(Samples.example(example));

        assertThat(VeraPdf.claim(report.bytes())).isIn("3a", "3u");
        assertThat(VeraPdf.problems(report.bytes(), VeraPdf.claim(report.bytes()))).isEmpty();
    }

    @Test
    void report_can_be_read_aloud_and_be_kept_with_photos_behind_it() throws IOException {
        ReportContent content =
                Samples.sample(Samples.QUEBEC_TRUCK).with(List.of(new Photo("tyres", photo())));

        byte[] pdf = PrintedReport.of(content).bytes();

        assertThat(VeraPdf.claim(pdf)).isEqualTo("3a");
        assertThat(VeraPdf.problems(pdf, "3a")).isEmpty();
        assertThat(VeraPdf.problems(pdf, "ua1")).isEmpty();
    }

    @Test
    void odd_letters_in_the_title_spoil_neither_metadata_nor_page() {
        String odd = "Truck <b>&amp; 7 \\\" \u00e9\u4e2d";
        ReportContent content =
                Samples.yaml(
                        Samples.text(Samples.QUEBEC_TRUCK)
                                .replaceFirst(
                                        "name: .*", "name: '" + odd.replace("'", "''") + "'"));

        byte[] pdf = PrintedReport.of(content).bytes();

        assertThat(VeraPdf.problems(pdf, VeraPdf.claim(pdf))).isEmpty();
    }

    @Test
    void metadata_say_the_same_in_both_places() throws IOException {
        PrintedReport report = PrintedReport.of(Samples.sample(Samples.QUEBEC_TRUCK));

        try (PDDocument document = report.open();
                InputStream in = document.getDocumentCatalog().getMetadata().exportXMPMetadata()) {
            String xmp = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            assertThat(xmp)
                    .contains(">" + document.getDocumentInformation().getTitle() + "<")
                    .contains("<xmp:CreateDate>2026-11-26T06:40:00-05:00</xmp:CreateDate>");
            assertThat(document.getDocumentInformation().getCreationDate().toInstant())
                    .isEqualTo("2026-11-26T11:40:00Z");
        }
    }

    @Test
    void colours_mean_what_the_java_library_takes_them_for() throws IOException {
        ColorSpace ours;
        try (InputStream in = Archive.class.getResourceAsStream("colour/srgb.icc")) {
            ours = new ICC_ColorSpace(ICC_Profile.getInstance(Objects.requireNonNull(in)));
        }
        ColorSpace theirs = ColorSpace.getInstance(ColorSpace.CS_sRGB);
        for (Color colour : List.of(Color.RED, Color.GREEN, Color.BLUE, Color.GRAY, Color.PINK)) {
            float[] parts = colour.getRGBColorComponents(null);
            float[] expected = theirs.toCIEXYZ(parts);
            float[] found = ours.toCIEXYZ(parts);
            for (int i = 0; i < expected.length; i++) {
                assertThat(found[i]).isCloseTo(expected[i], within(ROUNDED));
            }
        }
    }

    /** A photo of our own: a slope of colours. */
    static String photo() throws IOException {
        BufferedImage image = new BufferedImage(80, 60, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 80; x++) {
            for (int y = 0; y < 60; y++) {
                image.setRGB(x, y, new Color(x * 3, y * 4, 128).getRGB());
            }
        }
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        ImageIO.write(image, "jpeg", jpeg);
        return Base64.getEncoder().encodeToString(jpeg.toByteArray());
    }
}
