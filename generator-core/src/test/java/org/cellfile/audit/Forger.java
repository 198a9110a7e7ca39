package org.cellfile.audit;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.cellfile.render.pdf.Identifier;

/** What somebody can do to a file who has another program, and who writes a new identifier afterwards. */
final class Forger {

    private Forger() {}

    /** Something done to an opened file. */
    interface Deed {
        void to(PDDocument document) throws IOException;
    }

    /** Opens, changes and saves it, and seals it again. */
    static byte[] resealed(byte[] pdf, Deed deed) throws IOException {
        byte[] saved = saved(pdf, deed);
        Identifier.seal(saved);
        return saved;
    }

    /** Opens, changes and saves it. */
    static byte[] saved(byte[] pdf, Deed deed) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            deed.to(document);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        }
    }

    /** The contents of an embedded file. */
    static String embedded(PDDocument document, String name) throws IOException {
        return new String(
                Objects.requireNonNull(files(document).get(name))
                        .getEmbeddedFile()
                        .toByteArray(),
                StandardCharsets.UTF_8);
    }

    /** Gives an embedded file other contents. */
    static void embed(PDDocument document, String name, String contents) throws IOException {
        PDEmbeddedFile known = Objects.requireNonNull(files(document).get(name)).getEmbeddedFile();
        try (var out = known.getCOSObject().createOutputStream(COSName.FLATE_DECODE)) {
            out.write(contents.getBytes(StandardCharsets.UTF_8));
        }
    }

    /** Replaces a text in an embedded file that holds it. */
    static void replace(PDDocument document, String name, String from, String to) throws IOException {
        String before = embedded(document, name);
        if (!before.contains(from)) {
            throw new IllegalArgumentException(name + " does not hold " + from);
        }
        embed(document, name, before.replace(from, to));
    }

    static Map<String, PDComplexFileSpecification> files(PDDocument document) throws IOException {
        return new TreeMap<>(
                document.getDocumentCatalog().getNames().getEmbeddedFiles().getNames());
    }

    /** Changes the contents of a page, as bytes. */
    static void redraw(PDDocument document, int page, String from, String to) throws IOException {
        var contents = document.getPage(page).getCOSObject().getCOSStream(COSName.CONTENTS);
        String before;
        try (var in = contents.createInputStream()) {
            before = new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
        }
        if (!before.contains(from)) {
            throw new IllegalArgumentException("page " + page + " does not hold " + from);
        }
        try (var out = contents.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(before.replace(from, to).getBytes(StandardCharsets.ISO_8859_1));
        }
    }

    /** Changes one byte some way behind a place that the file must have. */
    static byte[] changed(byte[] pdf, String place, int behind) {
        String text = new String(pdf, StandardCharsets.ISO_8859_1);
        int at = text.indexOf(place);
        if (at < 0) {
            throw new IllegalArgumentException("the file does not hold " + place);
        }
        byte[] changed = pdf.clone();
        changed[at + place.length() + behind] ^= 0x01;
        return changed;
    }

    /** Adds bytes at the end. */
    static byte[] longer(byte[] pdf, String more) {
        byte[] bytes = more.getBytes(StandardCharsets.ISO_8859_1);
        byte[] longer = Arrays.copyOf(pdf, pdf.length + bytes.length);
        System.arraycopy(bytes, 0, longer, pdf.length, bytes.length);
        return longer;
    }
}
