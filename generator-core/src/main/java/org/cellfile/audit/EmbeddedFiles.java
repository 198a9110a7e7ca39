package org.cellfile.audit;

import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.InflaterInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.common.PDNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/** The files embedded in a PDF, by name. What is larger or more than a cell's can be is refused unread. */
public final class EmbeddedFiles {

    /** Bytes of a whole PDF (constructed, as all limits here: many times the largest file seen). */
    public static final long LARGEST_PDF = 64L << 20;

    private static final int MOST_FILES = 300;
    private static final int LARGEST_FILE = 8 << 20;
    private static final int LARGEST_TOGETHER = 32 << 20;
    private static final int DEEPEST = 8;

    private final SortedMap<String, byte[]> files = new TreeMap<>();
    private int together;

    private EmbeddedFiles() {}

    /** The bytes of each file by its name. A name is no more than that: nothing is written under it. */
    public static SortedMap<String, byte[]> of(byte[] pdf) throws UnreadablePdf {
        if (pdf.length > LARGEST_PDF) {
            throw new UnreadablePdf(
                    "it holds " + pdf.length + " bytes, more than the " + LARGEST_PDF + " that are read");
        }
        EmbeddedFiles found = new EmbeddedFiles();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            if (document.isEncrypted()) {
                throw new UnreadablePdf("it is encrypted, and an encrypted file is not read");
            }
            PDDocumentNameDictionary names = document.getDocumentCatalog().getNames();
            if (names != null && names.getEmbeddedFiles() != null) {
                found.gather(names.getEmbeddedFiles(), 1);
            }
        } catch (IOException | RuntimeException notRead) {
            throw new UnreadablePdf("it cannot be read as a PDF: " + notRead.getMessage());
        }
        return found.files;
    }

    private void gather(PDNameTreeNode<PDComplexFileSpecification> node, int depth) throws IOException, UnreadablePdf {
        if (depth > DEEPEST) {
            throw new UnreadablePdf("its list of embedded files is nested more than " + DEEPEST + " deep");
        }
        Map<String, PDComplexFileSpecification> named = node.getNames();
        if (named != null) {
            for (Map.Entry<String, PDComplexFileSpecification> one : named.entrySet()) {
                add(one.getKey(), one.getValue());
            }
        }
        if (node.getKids() != null) {
            for (PDNameTreeNode<PDComplexFileSpecification> kid : node.getKids()) {
                gather(kid, depth + 1);
            }
        }
    }

    private void add(String name, PDComplexFileSpecification specification) throws IOException, UnreadablePdf {
        PDEmbeddedFile file = specification.getEmbeddedFileUnicode();
        if (file == null) {
            file = specification.getEmbeddedFile();
        }
        if (file == null) {
            return;
        }
        byte[] bytes = bytes(name, file.getCOSObject());
        together += bytes.length;
        if (files.putIfAbsent(name, bytes) != null) {
            throw new UnreadablePdf("two files `" + name + "` are embedded in it");
        }
        if (files.size() > MOST_FILES || together > LARGEST_TOGETHER) {
            throw new UnreadablePdf("more is embedded in it than the " + MOST_FILES + " files and " + LARGEST_TOGETHER
                    + " bytes that are read");
        }
    }

    /** Unpacked here and not by the library, which would unpack all of it before anybody could stop. */
    private static byte[] bytes(String name, COSStream stream) throws IOException, UnreadablePdf {
        COSBase filter = stream.getFilters();
        if (filter != null && !COSName.FLATE_DECODE.equals(filter)) {
            throw new UnreadablePdf("the embedded file `" + name + "` is packed in a way that is not read");
        }
        try (InputStream raw = stream.createRawInputStream();
                InputStream plain = filter == null ? raw : new InflaterInputStream(raw)) {
            byte[] bytes = plain.readNBytes(LARGEST_FILE + 1);
            if (bytes.length > LARGEST_FILE) {
                throw new UnreadablePdf("the embedded file `" + name + "` holds more than the " + LARGEST_FILE
                        + " bytes that are read");
            }
            return bytes;
        }
    }
}
