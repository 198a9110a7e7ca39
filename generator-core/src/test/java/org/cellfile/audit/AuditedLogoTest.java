package org.cellfile.audit;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Objects;
import java.util.SortedMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** The plant's logo in a file that is handed over: it is recomputed with, and a changed one is found. The mark is constructed. */
class AuditedLogoTest {

    private static final String MARK = """
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 20"><rect width="40" height="20" fill="#cc0000"/></svg>
            """;

    private static byte[] pdf(boolean copy) {
        SortedMap<String, byte[]> files = ReleasedCell.unsigned();
        String sheets = new String(Objects.requireNonNull(files.get("sheets.yaml")), UTF_8);
        files.put(
                "sheets.yaml",
                sheets.replace("  responsible: ilse", "  responsible: ilse\n  logo: mark.svg")
                        .getBytes(UTF_8));
        files.put("mark.svg", MARK.getBytes(UTF_8));
        if (copy) {
            files.put("copies.yaml", "cellfile: 1\ncopies:\n  hold: no-internal-parts\n".getBytes(UTF_8));
        }
        return ReleasedCell.pdf(ReleasedCell.signed(files));
    }

    private static void assertAudits(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(Forger.embedded(document, "mark.svg")).isEqualTo(MARK);
        }
        AuditReport report = AuditTest.report(pdf);
        assertThat(report.differs()).isEmpty();
        assertThat(report.verdict()).isEqualTo("consistent in itself, origin unproven");
    }

    private static void assertFound(byte[] pdf) throws IOException {
        byte[] changed = Forger.resealed(pdf, document -> Forger.replace(document, "mark.svg", "#cc0000", "#00cc00"));
        AuditReport report = AuditTest.report(changed);
        assertThat(report.differs()).isNotEmpty();
        assertThat(report.verdict()).isNotEqualTo("consistent in itself, origin unproven");
        assertThat(report.text()).contains("`logo`: embedded", "#cc0000", "#00cc00");
    }

    @Test
    void nothingDiffersAndAChangedOneIsFound() throws IOException {
        byte[] pdf = pdf(false);
        assertAudits(pdf);
        assertFound(pdf);
    }

    @Test
    void theSameHoldsForACopyWithoutInternalParts() throws IOException {
        byte[] pdf = pdf(true);
        assertAudits(pdf);
        assertFound(pdf);
    }

    @Test
    void oneThatWasTakenOutIsMissed() throws IOException {
        byte[] without = Forger.resealed(pdf(false), document -> {
            var tree = document.getDocumentCatalog().getNames().getEmbeddedFiles();
            var left = Forger.files(document);
            var gone = Objects.requireNonNull(left.remove("mark.svg"));
            tree.setNames(left);
            var associated = document.getDocumentCatalog()
                    .getCOSObject()
                    .getCOSArray(org.apache.pdfbox.cos.COSName.getPDFName("AF"));
            associated.removeObject(gone.getCOSObject());
        });
        AuditReport report = AuditTest.report(without);
        assertThat(report.text()).contains("there is no file `mark.svg`");
    }
}
