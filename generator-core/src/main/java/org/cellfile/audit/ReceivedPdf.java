package org.cellfile.audit;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.io.MemoryUsageSetting;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdfparser.PDFParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.render.pdf.Embedded;
import org.cellfile.source.World;

/**
 * A PDF that somebody handed over, opened without trusting it: its size, the number of its parts and what they inflate to are
 * bounded, nothing in it is run, and whatever is wrong with it becomes a {@link Refusal}.
 */
public final class ReceivedPdf implements AutoCloseable {

    static final FindingId TOO_LARGE = new FindingId("audit.too-large");
    static final FindingId NO_PDF = new FindingId("audit.not-a-pdf");
    static final FindingId ENCRYPTED = new FindingId("audit.encrypted");
    static final FindingId UNREADABLE = new FindingId("audit.unreadable");

    /** Far above any safety file (one of some two hundred pages takes three million bytes). */
    private static final long LARGEST = 64L << 20;

    private static final int MOST_PAGES = 5_000;
    private static final long MOST_MEMORY = 96L << 20;

    /** Held here, as the platform forgets loggers that nobody holds. */
    private static final List<Logger> LIBRARY =
            List.of(Logger.getLogger("org.apache.pdfbox"), Logger.getLogger("org.apache.fontbox"));

    private static final byte[] HEADER = "%PDF-1.".getBytes(StandardCharsets.US_ASCII);

    static {
        // What it reports on the console about a broken file becomes a finding here. The names are those of its
        // packages.
        for (Logger library : LIBRARY) {
            library.setLevel(Level.OFF);
        }
    }

    private final String name;
    private final byte[] bytes;
    private final PDDocument document;
    private final ForeignParts foreign;
    private final List<Embedded> files;
    private final Map<String, String> information;
    private final String metadata;

    /** What can go wrong while a file nobody vouches for is read. */
    interface Step<T> {
        T take() throws IOException, Refusal;
    }

    private ReceivedPdf(String name, byte[] bytes, PDDocument document) throws IOException, Refusal {
        this.name = name;
        this.bytes = bytes;
        this.document = document;
        if (document.isEncrypted()) {
            throw encrypted(name);
        }
        COSDictionary catalog = document.getDocumentCatalog().getCOSObject();
        this.foreign = new ForeignParts(name);
        this.files = new AttachedFiles(name).of(catalog);
        this.information = new TreeMap<>();
        COSDictionary stated = document.getDocumentInformation().getCOSObject();
        for (COSName key : stated.keySet()) {
            information.put(
                    key.getName(), stated.getDictionaryObject(key) instanceof COSString text ? text.getString() : "");
        }
        COSStream packet = catalog.getCOSStream(COSName.METADATA);
        this.metadata = packet == null
                ? ""
                : new String(new Inflated(name, "metadata", 1 << 20, 1 << 20).of(packet), StandardCharsets.UTF_8);
    }

    /** Reads a file, if it is not larger than what is read. */
    public static byte[] bytes(World.Entry file) throws IOException, Refusal {
        if (file.size() > LARGEST) {
            throw tooLarge(file);
        }
        try (InputStream stream = file.content().open()) {
            byte[] bytes = stream.readNBytes((int) LARGEST + 1);
            if (bytes.length > LARGEST) {
                throw tooLarge(file);
            }
            return bytes;
        }
    }

    private static Refusal tooLarge(World.Entry file) {
        return Refusal.of(
                TOO_LARGE,
                file.path(),
                "the file holds more than the " + LARGEST + " bytes that are read",
                "a safety file is far smaller; see whether another file was saved under this name");
    }

    /** Opens it. */
    public static ReceivedPdf open(String name, byte[] bytes) throws Refusal {
        if (bytes.length < HEADER.length || !Arrays.equals(HEADER, 0, HEADER.length, bytes, 0, HEADER.length)) {
            throw Refusal.of(
                    NO_PDF,
                    name,
                    "the file does not begin as a PDF does",
                    "name the PDF itself; one that was packed or sent as text has to be unpacked first");
        }
        return guarded(name, () -> {
            Inflated.survey(name, bytes, (piece, length) -> {});
            PDFParser parser = new PDFParser(
                    new RandomAccessReadBuffer(bytes),
                    "",
                    null,
                    null,
                    MemoryUsageSetting.setupMainMemoryOnly(MOST_MEMORY).streamCache);
            PDDocument document;
            try {
                document = parser.parse(false); // what has to be mended to be read is not as this program wrote it
            } catch (InvalidPasswordException needed) {
                throw encrypted(name);
            }
            try {
                return new ReceivedPdf(name, bytes, document);
            } catch (IOException | RuntimeException | Refusal | Error failed) {
                document.close();
                throw failed;
            }
        });
    }

    private static Refusal encrypted(String name) {
        return Refusal.of(
                ENCRYPTED,
                name,
                "the file is encrypted, which a safety file never is",
                "ask whoever handed it over for the file as it was made");
    }

    private List<COSDictionary> pages() throws IOException {
        List<COSDictionary> pages = new ArrayList<>();
        for (PDPage page : document.getPages()) {
            pages.add(page.getCOSObject());
            if (pages.size() > MOST_PAGES) {
                throw new IOException("it has more than " + MOST_PAGES + " pages");
            }
        }
        return pages;
    }

    /** Everything that a damaged or a hostile file can do to its reader ends here, as a refusal. */
    static <T> T guarded(String name, Step<T> step) throws Refusal {
        String because;
        try {
            return step.take();
        } catch (OutOfMemoryError | StackOverflowError exhausted) {
            because = "reading it takes more than is set aside for that";
        } catch (IOException | RuntimeException damaged) {
            because = damaged.getMessage() == null ? "its structure is broken" : damaged.getMessage();
        }
        Finding finding = Refusal.finding(
                        UNREADABLE,
                        name,
                        "the file cannot be read as the PDF that this program writes",
                        "ask whoever handed it over for the file as it was made; one that was saved anew by another program or broke"
                                + " off on its way proves nothing")
                .because(List.of(because));
        throw new Refusal(finding);
    }

    /** The name it was given by. */
    public String name() {
        return name;
    }

    /** As it was handed over. */
    byte[] bytes() {
        return bytes;
    }

    /** The embedded files. */
    public List<Embedded> files() {
        return files;
    }

    /** One of them. */
    public Optional<Embedded> file(String called) {
        return files.stream().filter(file -> file.name().equals(called)).findFirst();
    }

    /** The text of each page in the order it was drawn; also looks for what does not belong on a page or into the file. */
    public List<PageText> texts() throws Refusal {
        return guarded(name, () -> {
            foreign.catalog(document.getDocumentCatalog().getCOSObject());
            return new PageReader(name, foreign).read(pages());
        });
    }

    /** The instructions of each page. */
    List<byte[]> drawn() throws Refusal {
        return guarded(name, () -> new PageReader(name, foreign).contents(pages()));
    }

    /** What does not belong into the file; complete when the {@link #texts} were read. */
    public List<Finding> foreign() {
        return foreign.findings();
    }

    /** What the file says of itself, by the names of the PDF standard. */
    public Map<String, String> information() {
        return information;
    }

    /** The same as an XMP packet; empty when there is none. */
    String metadata() {
        return metadata;
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException held) {
            // it was only read from memory
        }
    }
}
