package org.cellfile.render.pdf;

import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * One page tree laid out in memory, to be measured and then turned into a PDF/A-3a and PDF/UA-1 file.
 *
 * <p>Nothing is read from outside: every address a page names is refused, but for pictures that are in the page itself. The bytes depend on the markup, the imprint and
 * the embedded files alone (and on the JDK, whose deflater and colour profile are used). An {@link Identifier} near its end lets
 * everybody see whether a byte was changed since.
 */
public final class Typesetting implements AutoCloseable {

    private static final byte[] COLOURS =
            ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();

    static {
        // It reports on the console what it decides by itself; what matters to a reader is a finding or a test here.
        XRLog.setLoggingEnabled(false);
    }

    private final String markup;
    private final PDDocument document = new PDDocument();
    private final PdfBoxRenderer renderer;

    /** Lays the pages out. */
    public Typesetting(String markup) {
        this(markup, Typefaces.none());
    }

    /** The same where the plant has typefaces of its own. */
    public Typesetting(String markup, Typefaces own) {
        this.markup = markup;
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.usePDDocument(document);
        builder.useUriResolver((base, uri) -> inside(uri) ? uri : null);
        builder.useExternalResourceAccessControl(
                (uri, type) -> inside(uri), ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.useExternalResourceAccessControl(
                (uri, type) -> inside(uri), ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
        builder.useSVGDrawer(new Drawings());
        builder.useUnicodeLineBreaker(new LineBreaks());
        builder.useColorProfile(COLOURS);
        builder.usePdfAConformance(PdfAConformance.PDFA_3_A);
        builder.usePdfUaAccessibility(true);
        builder.withW3cDocument(parse(markup), "");
        Fonts.offer(builder, document, own);
        renderer = builder.buildPdfRenderer();
        renderer.layout();
    }

    /** True for a picture that stands in the markup itself. */
    private static boolean inside(String address) {
        return address.startsWith("data:image/png;base64,");
    }

    public int pages() {
        return renderer.getRootBox().getLayer().getPages().size();
    }

    /** What does not fit above the element with the id {@code foot}; empty when all of it does. */
    public Optional<Overflow> overflow() {
        return Overflow.above(renderer.getSharedContext().getBoxById("foot"), renderer.getRootBox());
    }

    /** Turns the pages into a file. */
    public byte[] pdf(Imprint imprint, List<Embedded> files) {
        try {
            renderer.createPDFWithoutClosing();
            Calendar day = GregorianCalendar.from(imprint.day().atStartOfDay(ZoneOffset.UTC));
            inform(imprint, day);
            embed(files, day);
            Identifier.announce(document, content(imprint, files));
            ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 20);
            document.save(bytes);
            byte[] file = bytes.toByteArray();
            Identifier.seal(file);
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        renderer.close();
        try {
            document.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Replaces what the layout engine wrote, which holds the time of the run. */
    private void inform(Imprint imprint, Calendar day) throws IOException {
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(imprint.title());
        information.setAuthor(imprint.author());
        information.setProducer("Cellfile");
        information.setCreationDate(day);
        information.setModificationDate(day);
        document.setDocumentInformation(information);

        PDMetadata metadata = new PDMetadata(document);
        metadata.importXMPMetadata(imprint.metadata().getBytes(StandardCharsets.UTF_8));
        document.getDocumentCatalog().setMetadata(metadata);
    }

    private void embed(List<Embedded> files, Calendar day) throws IOException {
        if (files.isEmpty()) {
            return;
        }
        Map<String, PDComplexFileSpecification> byName = new TreeMap<>();
        COSArray associated = new COSArray();
        for (Embedded file : files) {
            PDEmbeddedFile stream =
                    new PDEmbeddedFile(document, new ByteArrayInputStream(file.content()), COSName.FLATE_DECODE);
            stream.setSubtype(file.mediaType());
            stream.setSize(file.content().length);
            stream.setModDate(day);
            PDComplexFileSpecification specification = new PDComplexFileSpecification();
            specification.setFile(file.name());
            specification.setFileUnicode(file.name());
            specification.setFileDescription(file.description());
            specification.setEmbeddedFile(stream);
            specification.setEmbeddedFileUnicode(stream);
            specification.getCOSObject().setName("AFRelationship", file.relationship());
            byName.put(file.name(), specification);
            associated.add(specification);
        }
        PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
        tree.setNames(byName);
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        PDDocumentNameDictionary names = new PDDocumentNameDictionary(catalog);
        names.setEmbeddedFiles(tree);
        catalog.setNames(names);
        catalog.getCOSObject().setItem("AF", associated);
    }

    /** All that the file depends on. */
    private byte[] content(Imprint imprint, List<Embedded> files) {
        ByteArrayOutputStream content = new ByteArrayOutputStream(1 << 20);
        content.writeBytes(markup.getBytes(StandardCharsets.UTF_8));
        content.writeBytes(imprint.metadata().getBytes(StandardCharsets.UTF_8));
        for (Embedded file : files) {
            content.writeBytes(file.name().getBytes(StandardCharsets.UTF_8));
            content.writeBytes(file.content());
        }
        return content.toByteArray();
    }

    private static Document parse(String markup) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return factory.newDocumentBuilder().parse(new InputSource(new StringReader(markup)));
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new IllegalStateException("a template does not give well-formed XHTML", e);
        }
    }
}
