package org.cellfile.audit;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.zip.DeflaterOutputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionJavaScript;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionURI;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationText;
import org.cellfile.Audit;
import org.cellfile.dossier.MadeBy;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A released and signed file is changed in every way thought of; each is noticed, by the check it is up to. All figures are constructed. */
class TamperedFilesTest {

    /**
     * A changed file.
     *
     * @param told ids of findings that must be told
     * @param says a piece of one of their sentences
     * @param trusted keys from outside
     * @param redraw true when it shows only in a file that is drawn anew
     */
    @SuppressWarnings("ArrayRecordComponent") // Nobody compares two of these.
    record Case(String name, byte[] pdf, List<String> told, String says, String trusted, boolean redraw) {
        Case(String name, byte[] pdf, String told, String says) {
            this(name, pdf, List.of(told), says, "", false);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    /** Changed by hand, a byte in each sort of contents. */
    static List<Case> bytes() {
        byte[] pdf = ReleasedCell.pdf();
        String text = new String(pdf, StandardCharsets.ISO_8859_1);
        List<Case> cases = new java.util.ArrayList<>();
        record Place(String name, String mark, int behind) {}
        for (Place place : List.of(
                new Place("the version", "%PDF-1.", 0),
                new Place("the comment after it", "%PDF-1.6\n%", 1),
                new Place("the catalog or another part outside of streams", "/Type /Metadata", 3),
                new Place("the metadata", "<dc:format>", 2),
                new Place("a title in the metadata", "x-default\">", 1),
                new Place("a typeface", "/Length1 ", 400),
                new Place("an embedded file", "/Type /EmbeddedFile", 300),
                new Place("a stream of objects", "/Type /ObjStm", 200),
                new Place("the table of places", "/Type /XRef", 300),
                new Place("the trailer", "/Root ", 0),
                new Place("the first string of the identifier", "/ID [<", 4),
                new Place("where the table of places stands", "startxref\n", 1))) {
            cases.add(changed(place.name(), Forger.changed(pdf, place.mark(), place.behind())));
        }
        int stream = text.indexOf("stream\r\n", text.indexOf("/Filter /FlateDecode"));
        cases.add(changed("a page", Forger.changed(pdf, text.substring(stream, stream + 8), 40)));
        cases.add(changed("after the end", Forger.longer(pdf, "\n")));
        int second = text.indexOf("> <", text.indexOf("/ID [<")) + 3;
        byte[] otherSeal = pdf.clone();
        otherSeal[second] = (byte) (otherSeal[second] == '0' ? '1' : '0');
        cases.add(changed("the second string of the identifier", otherSeal));
        return cases;
    }

    private static Case changed(String name, byte[] pdf) {
        return new Case(name, pdf, "audit.identifier", "the file was changed after it was finished");
    }

    /** Changed with another program, and sealed again. */
    static List<Case> forged() throws IOException {
        byte[] pdf = ReleasedCell.pdf();
        List<Case> cases = new java.util.ArrayList<>();
        cases.add(forged("the words of a page", "audit.page-text", "page 1 says `", document -> shift(document, 0, 2)));
        cases.add(forged("a title in the metadata", "audit.metadata", "the metadata (XMP)", document -> {
            var stream = document.getDocumentCatalog().getMetadata().getCOSObject();
            String packet;
            try (var in = stream.createInputStream()) {
                packet = new String(in.readAllBytes(), UTF_8);
            }
            try (var out = stream.createOutputStream()) {
                out.write(packet.replace("Safety file", "Safety note").getBytes(UTF_8));
            }
        }));
        cases.add(forged(
                "the author",
                "audit.metadata",
                "`Author` `Somebody Else`",
                document -> document.getDocumentInformation().setAuthor("Somebody Else")));
        cases.add(forged(
                "a field of its own",
                "audit.metadata",
                "`Approved` `yes`",
                document -> document.getDocumentInformation().setCustomMetadataValue("Approved", "yes")));
        cases.add(forged(
                "a number in a source",
                "audit.sources",
                "are refused",
                document -> Forger.replace(document, "safeguards.yaml", "time: 14 ms", "time: 15 ms")));
        cases.add(forged(
                "a word in a source",
                "audit.dossier",
                "`Stacking of boxes.`",
                document -> Forger.replace(document, "cell.yaml", "Stacking of boxes.", "Stacking of crates.")));
        cases.add(forged(
                "a comment in a source",
                "audit.dossier",
                "the chapter `Sources`",
                document -> Forger.replace(document, "cell.yaml", "are invented.", "are invented!")));
        cases.add(forged("a value in the dossier", "audit.value", "recomputed from the embedded sources", document -> {
            String dossier = Forger.embedded(document, "dossier.json");
            Forger.embed(
                    document,
                    "dossier.json",
                    dossier.replaceFirst(
                            "(\"tag\" : \"curtain.separation-distance\",\\s+\"value\" : \")\\d+", "$1631"));
        }));
        cases.add(forged(
                "a text in the dossier",
                "audit.dossier",
                "`First issue.`",
                document -> Forger.replace(document, "dossier.json", "First issue.", "Last issue.")));
        cases.add(forged(
                "the layout of the dossier",
                "audit.dossier",
                "not in the form",
                document -> Forger.embed(document, "dossier.json", Forger.embedded(document, "dossier.json") + "\n")));
        cases.add(forged(
                "no dossier in the dossier",
                "audit.dossier",
                "not the form",
                document -> Forger.embed(document, "dossier.json", "[".repeat(5000))));
        cases.add(forged(
                "another version and a value", "audit.value", "`curtain.separation-distance` is 631 mm", document -> {
                    otherVersion(document);
                    String dossier = Forger.embedded(document, "dossier.json");
                    Forger.embed(
                            document,
                            "dossier.json",
                            dossier.replaceFirst(
                                    "(\"tag\" : \"curtain.separation-distance\",\\s+\"value\" : \")\\d+", "$1631"));
                }));
        cases.add(forged(
                "another version and words of a page",
                "audit.other-version",
                "places on the pages differ",
                document -> {
                    otherVersion(document);
                    shift(document, 1, 2);
                }));
        cases.add(forged("a page more", "audit.page-text", "page ", document -> document.addPage(copy(document, 0))));
        cases.add(forged("a page less", "audit.page-text", "page ", document -> document.removePage(5)));
        cases.add(forged("two pages in another order", "audit.page-text", "page ", document -> {
            PDPage page = document.getPage(6);
            document.removePage(6);
            document.getPages().insertAfter(page, document.getPage(8));
        }));
        cases.add(forged("an empty page", "audit.page-text", "page ", document -> {
            PDPage empty = new PDPage(PDRectangle.A4);
            empty.setContents(new org.apache.pdfbox.pdmodel.common.PDStream(
                    document, new java.io.ByteArrayInputStream(new byte[0])));
            document.addPage(empty);
        }));
        cases.add(forged(
                "one embedded file in place of another",
                "audit.sources",
                "refused",
                document -> Forger.embed(document, "zones.yaml", Forger.embedded(document, "robots.yaml"))));
        cases.add(forged(
                "an embedded file more",
                "audit.attachment",
                "`notes.txt` is no source",
                document -> attach(document, "notes.txt", "notes.txt", "notes.txt")));
        cases.add(forged(
                "a source more",
                "audit.dossier",
                "`Sources`",
                document -> attach(document, "more.yaml", "more.yaml", "more.yaml")));
        cases.add(forged(
                "words that do not show",
                "audit.foreign-part",
                "the instruction `Tr` on page 3",
                document -> Forger.redraw(document, 2, "\nBT\n", "\nBT\n3 Tr\n")));
        cases.add(forged(
                "words that are put twice",
                "audit.page-text",
                "page 3 says `page ", // the number once more, as in 6767
                document -> twice(document, 2)));
        cases.add(forged(
                "words behind the words",
                "audit.foreign-part",
                "words behind the words on page 3",
                document -> Forger.redraw(document, 2, "<</MCID 3>> BDC", "<</MCID 3 /ActualText (1)>> BDC")));
        cases.add(forged(
                "a layer that can be hidden",
                "audit.foreign-part",
                "layers that can be hidden",
                document -> document.getDocumentCatalog().setOCProperties(new PDOptionalContentProperties())));
        cases.add(forged(
                "a script",
                "audit.foreign-part",
                "an action on opening",
                document -> document.getDocumentCatalog().setOpenAction(new PDActionJavaScript("app.alert(1)"))));
        cases.add(forged("a script with a name", "audit.foreign-part", "holds JavaScript", document -> {
            COSDictionary names = document.getDocumentCatalog().getNames().getCOSObject();
            names.setItem("JavaScript", new COSDictionary());
        }));
        cases.add(forged("an address", "audit.foreign-part", "an address on the network on page 2", document -> {
            PDAnnotationLink link = new PDAnnotationLink();
            PDActionURI action = new PDActionURI();
            action.setURI("http://example.invalid/");
            link.setAction(action);
            document.getPage(1).getAnnotations().add(link);
            annotate(document.getPage(1), link.getCOSObject());
        }));
        cases.add(forged(
                "a note over the page",
                "audit.foreign-part",
                "a note of the sort `Text` on page 1",
                document -> annotate(document.getPage(0), new PDAnnotationText().getCOSObject())));
        cases.add(forged(
                "a form to fill in",
                "audit.foreign-part",
                "a form to fill in",
                document ->
                        document.getDocumentCatalog().getCOSObject().setItem(COSName.ACRO_FORM, new COSDictionary())));
        cases.add(forged(
                "a draft that says it is a release",
                "audit.page-text",
                "DRAFT",
                document -> {},
                released(ReleasedCell.draft(ReleasedCell.files()))));
        cases.add(new Case(
                "a release with something that bars it",
                released(ReleasedCell.draft(withOpenPoint())),
                "audit.state",
                "2 things bar release"));
        cases.add(new Case(
                "a signature of another",
                Forger.resealed(pdf, document -> {
                    String signed = Forger.embedded(document, "sign-offs.yaml");
                    String last = signed.substring(signed.lastIndexOf("signature: \"") + 12, signed.lastIndexOf('"'));
                    Forger.embed(
                            document,
                            "sign-offs.yaml",
                            signed.replaceFirst("signature: \"[^\"]+", "signature: \"" + last));
                }),
                "audit.signature",
                "`checked` of the whole file by B. Ostrow"));
        cases.add(new Case(
                "a key trusted as another's",
                pdf,
                List.of("audit.another-owner"),
                "trusted as that of K. Holm",
                ReleasedCell.trusted("K. Holm", "C. Vell"),
                false));
        cases.add(new Case(
                "words that stand elsewhere",
                Forger.resealed(pdf, document -> Forger.redraw(document, 4, " Tm\n", ".5 Tm\n")),
                List.of("audit.drawn-otherwise"),
                "page 5 is the first",
                "",
                true));
        cases.add(new Case(
                "another typeface",
                Forger.resealed(pdf, document -> {
                    var font = document.getPage(0)
                            .getResources()
                            .getFontNames()
                            .iterator()
                            .next();
                    var stream = document.getPage(0)
                            .getResources()
                            .getFont(font)
                            .getCOSObject()
                            .getCOSArray(COSName.DESCENDANT_FONTS);
                    var program = ((COSDictionary) stream.getObject(0))
                            .getCOSDictionary(COSName.FONT_DESC)
                            .getCOSStream(COSName.FONT_FILE2);
                    byte[] outlines;
                    try (var in = program.createInputStream()) {
                        outlines = in.readAllBytes();
                    }
                    outlines[outlines.length / 2] ^= 1;
                    try (var out = program.createOutputStream(COSName.FLATE_DECODE)) {
                        out.write(outlines);
                    }
                }),
                List.of("audit.drawn-otherwise"),
                "every page is drawn alike",
                "",
                true));
        return cases;
    }

    /** Written on at the end, as other programs do that sign or fill in. */
    static List<Case> writtenOn() throws IOException {
        byte[] pdf = ReleasedCell.pdf();
        byte[] longer;
        try (PDDocument document = Loader.loadPDF(pdf)) {
            document.getDocumentInformation().setAuthor("Somebody Else");
            document.getDocumentInformation().getCOSObject().setNeedToBeUpdated(true);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.saveIncremental(out);
            longer = out.toByteArray();
        }
        assertThat(longer).startsWith(pdf);
        return List.of(changed("written on", longer));
    }

    /** What is no safety file, or was made to harm its reader. */
    static List<Case> hostile() throws IOException {
        byte[] pdf = ReleasedCell.pdf();
        List<Case> cases = new java.util.ArrayList<>();
        cases.add(new Case("empty", new byte[0], "audit.not-a-pdf", "does not begin as a PDF"));
        cases.add(new Case("a text", "Dear auditor".getBytes(UTF_8), "audit.not-a-pdf", "does not begin as a PDF"));
        cases.add(new Case("the header alone", "%PDF-1.7\n".getBytes(UTF_8), "audit.unreadable", "cannot be read"));
        for (int part : List.of(10, 2)) {
            cases.add(new Case(
                    "broken off after one of " + part + " parts",
                    java.util.Arrays.copyOf(pdf, pdf.length / part),
                    "audit.unreadable",
                    "cannot be read"));
        }
        cases.add(new Case("a foreign PDF", foreign(document -> {}), "audit.not-ours", "no `dossier.json`"));
        cases.add(new Case(
                "a PDF without embedded files",
                Forger.saved(pdf, document -> {
                    document.getDocumentCatalog().getCOSObject().removeItem(COSName.NAMES);
                    document.getDocumentCatalog().getCOSObject().removeItem(COSName.getPDFName("AF"));
                }),
                "audit.not-ours",
                "no `dossier.json`"));
        cases.add(new Case(
                "encrypted",
                foreign(document ->
                        document.protect(new StandardProtectionPolicy("owner", "user", new AccessPermission()))),
                "audit.encrypted",
                "encrypted"));
        cases.add(new Case(
                "encrypted, and open to everybody",
                foreign(document ->
                        document.protect(new StandardProtectionPolicy("owner", "", new AccessPermission()))),
                "audit.encrypted",
                "encrypted"));
        cases.add(new Case(
                "a thousand embedded files",
                foreign(document -> {
                    for (int i = 0; i < 1000; i++) {
                        add(document, "file-" + i + ".yaml", "file-" + i + ".yaml");
                    }
                }),
                "audit.too-much-inside",
                "more than 300 files"));
        cases.add(new Case(
                "a large embedded file",
                foreign(document -> add(document, "large.csv", "large.csv", new byte[9 << 20])),
                "audit.too-much-inside",
                "8 MB each"));
        cases.add(new Case(
                "many large embedded files",
                foreign(document -> {
                    for (int i = 0; i < 5; i++) {
                        add(document, "large-" + i + ".csv", "large-" + i + ".csv", new byte[7 << 20]);
                    }
                }),
                "audit.too-much-inside",
                "32 MB together"));
        for (String name : List.of(
                "../outside.yaml",
                "/etc/outside.yaml",
                "C:outside.yaml",
                "a\\b.yaml",
                "a//b.yaml",
                "line\nend.yaml",
                ".hidden",
                "")) {
            cases.add(new Case(
                    "an embedded file `" + name.replace("\n", "↵") + "`",
                    Forger.resealed(pdf, document -> attach(document, name, name, name)),
                    "audit.attachment",
                    "no name of a file below a folder"));
        }
        cases.add(new Case(
                "a page packed twice",
                Forger.saved(pdf, document -> {
                    var contents = document.getPage(3).getCOSObject().getCOSStream(COSName.CONTENTS);
                    byte[] once;
                    try (var in = contents.createRawInputStream()) {
                        once = in.readAllBytes();
                    }
                    ByteArrayOutputStream twice = new ByteArrayOutputStream();
                    try (DeflaterOutputStream deflater = new DeflaterOutputStream(twice)) {
                        deflater.write(once);
                    }
                    try (var out = contents.createRawOutputStream()) {
                        out.write(twice.toByteArray());
                    }
                    COSArray filters = new COSArray();
                    filters.add(COSName.FLATE_DECODE);
                    filters.add(COSName.FLATE_DECODE);
                    contents.setItem(COSName.FILTER, filters);
                }),
                "audit.unreadable",
                "cannot be read as the PDF that this program writes"));
        cases.add(new Case(
                "pages in a ring",
                Forger.saved(pdf, document -> {
                    COSDictionary root =
                            document.getDocumentCatalog().getCOSObject().getCOSDictionary(COSName.PAGES);
                    root.getCOSArray(COSName.KIDS).add(root);
                }),
                "audit.identifier",
                "changed"));
        cases.add(new Case(
                "six thousand pages",
                Forger.saved(pdf, document -> {
                    for (int i = 0; i < 6000; i++) {
                        document.addPage(new PDPage());
                    }
                }),
                "audit.unreadable",
                "cannot be read"));
        cases.add(new Case(
                "two dossiers",
                Forger.resealed(pdf, document -> attach(document, "dossier.json", "dossier.json", "dossier.json")),
                "audit.attachment",
                "two of them have the name `dossier.json`"));
        cases.add(new Case(
                "two names that are one on some machines",
                Forger.resealed(pdf, document -> attach(document, "Dossier.json", "Dossier.json", "Dossier.json")),
                "audit.attachment",
                "two of them have the name `Dossier.json`"));
        cases.add(new Case(
                "an embedded file with a second name",
                Forger.resealed(pdf, document -> attach(document, "more.yaml", "more.yaml", "cell.yaml")),
                "audit.attachment",
                "`more.yaml` has a second name"));
        cases.add(new Case(
                "an embedded file with a second content",
                Forger.resealed(pdf, document -> {
                    COSDictionary files = Forger.files(document)
                            .values()
                            .iterator()
                            .next()
                            .getCOSObject()
                            .getCOSDictionary(COSName.EF);
                    files.setItem(
                            COSName.UF,
                            new PDEmbeddedFile(document, new java.io.ByteArrayInputStream("other".getBytes(UTF_8))));
                }),
                "audit.attachment",
                "not one and the same content"));
        cases.add(new Case(
                "a list of embedded files in a ring",
                foreign(document -> {
                    COSDictionary node = new COSDictionary();
                    COSArray kids = new COSArray();
                    kids.add(node);
                    kids.add(node);
                    node.setItem(COSName.KIDS, kids);
                    COSDictionary names = new COSDictionary();
                    names.setItem(COSName.EMBEDDED_FILES, node);
                    document.getDocumentCatalog().getCOSObject().setItem(COSName.NAMES, names);
                }),
                "audit.attachment",
                "nested deeper"));
        return cases;
    }

    private static final List<Case> ALL = made();

    private static List<Case> made() {
        try {
            return Stream.of(bytes(), forged(), writtenOn(), hostile())
                    .flatMap(List::stream)
                    .toList();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    static List<Case> all() {
        return ALL;
    }

    @ParameterizedTest
    @MethodSource("all")
    void isNoticed(Case one) {
        AuditReport report = AuditTest.examined(
                        one.pdf(),
                        one.trusted().isEmpty() ? TrustedKeys.none() : AuditTest.keys(one.trusted()),
                        one.redraw())
                .report();
        assertThat(report.verdict()).isEqualTo("does not agree");
        assertThat(ids(report)).containsAll(one.told());
        assertThat(report.differs())
                .filteredOn(finding -> one.told().contains(finding.id().words()))
                .extracting(Finding::sentence)
                .as(report.text())
                .anyMatch(sentence -> sentence.contains(one.says()));
    }

    /** Who changes nothing but one thing is told that thing. */
    @Test
    void aForgedWordOrNumberIsTheOnlyThingTold() {
        for (Case one : ALL) {
            if (Set.of("the words of a page", "the author", "a text in the dossier", "a script")
                    .contains(one.name())) {
                assertThat(ids(AuditTest.report(one.pdf()))).as(one.name()).hasSameElementsAs(one.told());
            }
        }
    }

    @Test
    void aVersionThatChangedNothingIsLetThrough() throws IOException {
        AuditReport report = AuditTest.report(Forger.resealed(ReleasedCell.pdf(), TamperedFilesTest::otherVersion));
        assertThat(report.differs()).isEmpty();
        assertThat(report.unsaid())
                .anyMatch(line -> line.startsWith("version: made by 0.0.1, this is " + MadeBy.version()));
    }

    @Test
    void rulesThatTheRegisterHoldsOtherwiseAreTold() throws IOException {
        AuditReport report = AuditTest.report(Forger.resealed(ReleasedCell.pdf(), document -> {
            otherVersion(document);
            String dossier = Forger.embedded(document, "dossier.json");
            Forger.embed(
                    document,
                    "dossier.json",
                    dossier.replace("ISO 10218-1:2011, cl. 5.8.3", "ISO 10218-1:2011, cl. 5.8.4"));
        }));
        assertThat(report.unsaid()).anyMatch(line -> line.startsWith("rules of another version: `"));
        assertThat(ids(report)).containsOnly("audit.other-version");
    }

    @Test
    void everySortOfFindingIsMetHere() throws Exception {
        Set<String> met = new HashSet<>(Set.of("audit.too-large", "audit.trusted-keys")); // MainTest, AuditTest
        ALL.forEach(one -> met.addAll(one.told()));
        assertThat(met).containsExactlyInAnyOrderElementsOf(known());
    }

    private static Set<String> known() throws Exception {
        Path classes = Path.of(
                Audit.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        Set<String> ids = new TreeSet<>();
        try (Stream<Path> files = Files.list(classes.resolve("org/cellfile/audit"))) {
            for (Path file : (Iterable<Path>) files::iterator) {
                String name = file.getFileName().toString().replace(".class", "");
                if (!name.equals("package-info")) {
                    for (Field field :
                            Class.forName("org.cellfile.audit." + name).getDeclaredFields()) {
                        if (field.getType() == FindingId.class && Modifier.isStatic(field.getModifiers())) {
                            field.setAccessible(true);
                            ids.add(((FindingId) field.get(null)).words());
                        }
                    }
                }
            }
        }
        return ids;
    }

    private static Set<String> ids(AuditReport report) {
        Set<String> ids = new TreeSet<>();
        report.differs().forEach(finding -> ids.add(finding.id().words()));
        return ids;
    }

    private static Case forged(String name, String told, String says, Forger.Deed deed) throws IOException {
        return forged(name, told, says, deed, ReleasedCell.pdf());
    }

    private static Case forged(String name, String told, String says, Forger.Deed deed, byte[] pdf) throws IOException {
        return new Case(name, Forger.resealed(pdf, deed), told, says);
    }

    /** Shows one text of a page with the letters in another order. */
    private static void shift(PDDocument document, int page, int which) throws IOException {
        var contents = document.getPage(page).getCOSObject().getCOSStream(COSName.CONTENTS);
        String text;
        try (var in = contents.createInputStream()) {
            text = new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
        }
        int at = text.indexOf("/MCID");
        for (int i = 0; i < which; i++) {
            at = text.indexOf("/MCID", at + 1);
        }
        int shown = text.indexOf("(\0", at) + 1;
        String two = text.substring(shown, shown + 4);
        String changed = text.substring(0, shown) + two.substring(2) + two.substring(0, 2) + text.substring(shown + 4);
        assertThat(changed).isNotEqualTo(text);
        try (var out = contents.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(changed.getBytes(StandardCharsets.ISO_8859_1));
        }
    }

    private static void twice(PDDocument document, int page) throws IOException {
        var contents = document.getPage(page).getCOSObject().getCOSStream(COSName.CONTENTS);
        String text;
        try (var in = contents.createInputStream()) {
            text = new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
        }
        int from = text.lastIndexOf("BT\n", text.lastIndexOf(" Tj"));
        int to = text.indexOf("ET\n", from) + 3;
        try (var out = contents.createOutputStream(COSName.FLATE_DECODE)) {
            out.write((text.substring(0, to) + text.substring(from, to) + text.substring(to))
                    .getBytes(StandardCharsets.ISO_8859_1));
        }
    }

    private static PDPage copy(PDDocument document, int page) throws IOException {
        PDPage copy = new PDPage(new COSDictionary(document.getPage(page).getCOSObject()));
        copy.getCOSObject().removeItem(COSName.PARENT);
        return copy;
    }

    private static void annotate(PDPage page, COSDictionary note) {
        COSArray notes = page.getCOSObject().getCOSArray(COSName.ANNOTS);
        if (notes == null) {
            notes = new COSArray();
            page.getCOSObject().setItem(COSName.ANNOTS, notes);
        }
        notes.add(note);
    }

    private static void otherVersion(PDDocument document) throws IOException {
        Forger.replace(document, "dossier.json", "\"madeBy\" : \"" + MadeBy.version() + "\"", "\"madeBy\" : \"0.0.1\"");
    }

    private static byte[] released(byte[] draft) throws IOException {
        return Forger.resealed(
                draft, document -> Forger.replace(document, "printed.json", "\"draft\"", "\"released\""));
    }

    private static SortedMap<String, byte[]> withOpenPoint() {
        SortedMap<String, byte[]> files = new TreeMap<>(ReleasedCell.files());
        files.put(
                "points.yaml",
                ("cellfile: 1\nopen-points:\n  - {tag: lamp, what: A lamp is missing, owner: ilse, since: 2026-11-19,"
                                + " until: 2026-12-19, before-release: yes}\n")
                        .getBytes(UTF_8));
        return files;
    }

    private static byte[] foreign(Forger.Deed deed) throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage());
            deed.to(document);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        }
    }

    private static void attach(PDDocument document, String key, String name, String unicode) throws IOException {
        COSArray names = document.getDocumentCatalog()
                .getNames()
                .getEmbeddedFiles()
                .getCOSObject()
                .getCOSArray(COSName.NAMES);
        names.add(new org.apache.pdfbox.cos.COSString(key));
        names.add(specification(document, name, unicode, "cellfile: 1\n".getBytes(UTF_8)));
    }

    private static void add(PDDocument document, String name, String unicode) throws IOException {
        add(document, name, unicode, name.toUpperCase(Locale.ROOT).getBytes(UTF_8));
    }

    private static void add(PDDocument document, String name, String unicode, byte[] contents) throws IOException {
        COSDictionary catalog = document.getDocumentCatalog().getCOSObject();
        if (catalog.getCOSDictionary(COSName.NAMES) == null) {
            COSDictionary tree = new COSDictionary();
            tree.setItem(COSName.NAMES, new COSArray());
            COSDictionary names = new COSDictionary();
            names.setItem(COSName.EMBEDDED_FILES, tree);
            catalog.setItem(COSName.NAMES, names);
        }
        COSArray names = catalog.getCOSDictionary(COSName.NAMES)
                .getCOSDictionary(COSName.EMBEDDED_FILES)
                .getCOSArray(COSName.NAMES);
        names.add(new org.apache.pdfbox.cos.COSString(name));
        names.add(specification(document, name, unicode, contents));
    }

    private static COSDictionary specification(PDDocument document, String name, String unicode, byte[] contents)
            throws IOException {
        PDEmbeddedFile stream =
                new PDEmbeddedFile(document, new java.io.ByteArrayInputStream(contents), COSName.FLATE_DECODE);
        PDComplexFileSpecification specification = new PDComplexFileSpecification();
        specification.setFile(name);
        specification.setFileUnicode(unicode);
        specification.setEmbeddedFile(stream);
        specification.setEmbeddedFileUnicode(stream);
        return specification.getCOSObject();
    }
}
