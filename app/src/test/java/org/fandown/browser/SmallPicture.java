package org.fandown.browser;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.imageio.ImageIO;

/**
 * A picture of a page with few colours, as a small PNG: pages are drawn flat, so the most frequent
 * shades and the nearest of them for all others leave everything readable.
 */
final class SmallPicture {
    private static final int COLOURS = 96;

    /** Shades nearer than this many of 256 steps are one. */
    private static final int STEP = 4;

    private final int[] palette;
    private final Map<Integer, Integer> nearest = new TreeMap<>();

    private SmallPicture(BufferedImage from) {
        Map<Integer, Integer> counts = new TreeMap<>();
        for (int y = 0; y < from.getHeight(); y++) {
            for (int x = 0; x < from.getWidth(); x++) {
                counts.merge(rounded(from.getRGB(x, y)), 1, Integer::sum);
            }
        }
        List<Integer> frequent =
                counts.entrySet().stream()
                        .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                        .limit(COLOURS)
                        .map(Map.Entry::getKey)
                        .toList();
        palette = frequent.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Writes a screenshot. */
    static void write(byte[] png, Path to) throws IOException {
        BufferedImage from = ImageIO.read(new ByteArrayInputStream(png));
        ImageIO.write(new SmallPicture(from).of(from), "png", to.toFile());
    }

    private BufferedImage of(BufferedImage from) {
        IndexColorModel colours =
                new IndexColorModel(
                        8,
                        palette.length,
                        palette,
                        0,
                        false,
                        -1,
                        java.awt.image.DataBuffer.TYPE_BYTE);
        BufferedImage small =
                new BufferedImage(
                        from.getWidth(),
                        from.getHeight(),
                        BufferedImage.TYPE_BYTE_INDEXED,
                        colours);
        for (int y = 0; y < from.getHeight(); y++) {
            for (int x = 0; x < from.getWidth(); x++) {
                int shade = rounded(from.getRGB(x, y));
                int index = nearest.computeIfAbsent(shade, this::nearest);
                small.getRaster().setSample(x, y, 0, index);
            }
        }
        return small;
    }

    private int nearest(int shade) {
        int best = 0;
        for (int i = 1; i < palette.length; i++) {
            if (apart(palette[i], shade) < apart(palette[best], shade)) {
                best = i;
            }
        }
        return best;
    }

    private static int apart(int a, int b) {
        int sum = 0;
        for (int bits = 0; bits <= 16; bits += 8) {
            int by = (a >> bits & 0xff) - (b >> bits & 0xff);
            sum += by * by;
        }
        return sum;
    }

    private static int rounded(int rgb) {
        int shade = 0;
        for (int bits = 0; bits <= 16; bits += 8) {
            int part = rgb >> bits & 0xff;
            shade |= Math.min(0xff, (part + STEP / 2) / STEP * STEP) << bits;
        }
        return shade;
    }
}
