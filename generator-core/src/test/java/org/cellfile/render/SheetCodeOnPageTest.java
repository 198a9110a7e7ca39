package org.cellfile.render;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import com.google.zxing.qrcode.decoder.Decoder;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.cellfile.dossier.Sheet;
import org.cellfile.dossier.SheetCode;
import org.cellfile.render.code.QrCode;
import org.cellfile.verdict.Printable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The code on a sheet, looked at as a camera does: the image of the page, not what was written into it. The figures and texts are constructed. */
class SheetCodeOnPageTest {

    private static String decoded(BufferedImage page) throws ReaderException {
        int width = page.getWidth();
        int height = page.getHeight();
        return new QRCodeReader()
                .decode(
                        new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(
                                width, height, page.getRGB(0, 0, width, height, null, 0, width)))),
                        Map.of(DecodeHintType.TRY_HARDER, true))
                .getText();
    }

    private static PDDocument sheet(Printable printable) throws IOException {
        Rendering rendering = new Renderer().render(printable, List.of());
        return Loader.loadPDF(
                Objects.requireNonNull(((Rendering.Pages) rendering).files().get("sheets/operator-en.pdf")));
    }

    @ParameterizedTest
    @CsvSource({"150, RGB", "150, GRAY", "300, BINARY"})
    void isReadFromTheImageOfThePage(float dotsPerInch, ImageType type) throws IOException, ReaderException {
        Printable printable = new ExampleDossier().printable();
        Sheet sheet = printable.dossier().sheets().get(0);
        SheetCode code = SheetCode.of(sheet, printable.dossier().label(), true);
        try (PDDocument page = sheet(printable)) {
            assertThat(decoded(new PDFRenderer(page).renderImageWithDPI(0, dotsPerInch, type)))
                    .isEqualTo(code.text());
            assertThat(new PDFTextStripper().getText(page).replace('\u00a0', ' '))
                    .contains("Short digest", SheetCode.grouped(code.digest()), "Valid until", "2025-06-30");
        }
    }

    @Test
    void saysWhetherItWasReleased() throws IOException, ReaderException {
        Printable printable = new ExampleDossier().released("").printable();
        try (PDDocument page = sheet(printable)) {
            assertThat(SheetCode.read(decoded(new PDFRenderer(page).renderImageWithDPI(0, 150))))
                    .hasValueSatisfying(code -> assertThat(code.draft()).isFalse());
        }
    }

    /** The modules are drawn as runs; put back into a square they are decoded without an image. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "cellfile sheet 1; weir-2; revision C",
                "cellfile sheet 1; weir-2; revision \u00c4nderung 3\u00bd",
                "cellfile sheet 1; weir-2; revision \u017b\u00f3\u0142w \u03b2"
            })
    void holdsLettersOfAnyLanguage(String text) throws ReaderException {
        QrCode code = QrCode.of(text);
        int modules = code.size() - 8;
        BitMatrix square = new BitMatrix(modules);
        Matcher run = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1h-(\\d+)z").matcher(code.dark());
        while (run.find()) {
            assertThat(run.group(3)).isEqualTo(run.group(4));
            square.setRegion(
                    Integer.parseInt(run.group(1)) - 4,
                    Integer.parseInt(run.group(2)) - 4,
                    Integer.parseInt(run.group(3)),
                    1);
        }

        assertThat(new Decoder().decode(square).getText()).isEqualTo(text);
    }
}
