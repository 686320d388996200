package org.fandown.app.paper;

import java.awt.geom.GeneralPath;
import java.util.List;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.fontbox.util.BoundingBox;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.jspecify.annotations.Nullable;

/**
 * Keeps the library away from the fonts of the machine. Every letter of a report comes from the
 * fonts it embeds; without this the library would search the disk, write a cache into the home
 * directory and talk about it on standard error, all for fonts that are never used.
 */
final class NoSystemFonts implements FontMapper {
    private NoSystemFonts() {}

    static void use() {
        FontMappers.set(new NoSystemFonts());
    }

    @Override
    public @Nullable FontMapping<TrueTypeFont> getTrueTypeFont(
            String name, PDFontDescriptor descriptor) {
        return null;
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(new Empty(name), false);
    }

    @Override
    public @Nullable CIDFontMapping getCIDFont(
            String name, PDFontDescriptor descriptor, PDCIDSystemInfo system) {
        return null;
    }

    /**
     * A font without a single letter.
     *
     * @param name the name that was asked for
     */
    private record Empty(String name) implements FontBoxFont {
        private static final float UNIT = 0.001f;

        @Override
        public String getName() {
            return name;
        }

        @Override
        public BoundingBox getFontBBox() {
            PDRectangle none = new PDRectangle();
            return new BoundingBox(
                    none.getLowerLeftX(),
                    none.getLowerLeftY(),
                    none.getUpperRightX(),
                    none.getUpperRightY());
        }

        @Override
        public List<Number> getFontMatrix() {
            return List.of(UNIT, 0, 0, UNIT, 0, 0);
        }

        @Override
        public GeneralPath getPath(String glyph) {
            return new GeneralPath();
        }

        @Override
        public float getWidth(String glyph) {
            return 0;
        }

        @Override
        public boolean hasGlyph(String glyph) {
            return false;
        }
    }
}
