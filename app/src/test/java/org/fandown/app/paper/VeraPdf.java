package org.fandown.app.paper;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import org.verapdf.core.EncryptedPdfException;
import org.verapdf.core.ModelParsingException;
import org.verapdf.core.ValidationException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** What another program says of a document that claims to keep PDF/A. */
public final class VeraPdf {
    private static final int MOST = 20;

    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private VeraPdf() {}

    /** What it claims: {@code 3a}. */
    public static String claim(byte[] pdf) {
        try (PDFAParser parser =
                Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf))) {
            return parser.getFlavour().getId();
        } catch (IOException | ModelParsingException | EncryptedPdfException e) {
            throw new AssertionError(e);
        }
    }

    /**
     * What is wrong with it, empty if nothing.
     *
     * @param level the part of the standard: {@code 3a}, {@code 3u}, {@code ua1}
     */
    public static List<String> problems(byte[] pdf, String level) {
        PDFAFlavour flavour = PDFAFlavour.byFlavourId(level);
        try (PDFAParser parser =
                        Foundries.defaultInstance()
                                .createParser(new ByteArrayInputStream(pdf), flavour);
                PDFAValidator validator =
                        Foundries.defaultInstance()
                                .createValidator(flavour, MOST, false, false, false)) {
            return validator.validate(parser).getTestAssertions().stream()
                    .filter(each -> each.getStatus() == TestAssertion.Status.FAILED)
                    .map(each -> each.getRuleId().getClause() + ": " + each.getMessage())
                    .distinct()
                    .toList();
        } catch (IOException
                | ModelParsingException
                | EncryptedPdfException
                | ValidationException e) {
            throw new AssertionError(e);
        }
    }
}
