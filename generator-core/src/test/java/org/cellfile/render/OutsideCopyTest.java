package org.cellfile.render;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.text.PDFTextStripper;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.dossier.Canonical;
import org.cellfile.dossier.Dossier;
import org.cellfile.dossier.Statement;
import org.cellfile.dossier.Substance;
import org.cellfile.finding.Findings;
import org.cellfile.source.World;
import org.cellfile.subject.signoff.InternalPart;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A copy without internal parts holds none of them, anywhere, and still says of which description it was made. */
class OutsideCopyTest {

    private static final Path BASE = Path.of("src", "test", "resources", "refusals", "base");
    private static final String WITHOUT =
            "\n# a zanzibarite remark\ncopies:\n  hold: no-internal-parts # zanzibarite\n";

    /** Shorter ones stand by chance in tables of fonts. */
    private static final int SHORTEST = 6;

    @TempDir
    private Path folder;

    private void copy(Path from) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : (Iterable<Path>) files.filter(Files::isRegularFile)::iterator) {
                Path target = folder.resolve(from.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.write(target, Files.readAllBytes(file));
            }
        }
    }

    private void append(String file, String text) throws IOException {
        Files.writeString(folder.resolve(file), Files.readString(folder.resolve(file)) + text);
    }

    private Generator.Generated generated() {
        Clock day = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);
        return new Generator().generate(new FolderWorld(folder, day));
    }

    /** Everything a program can get out of the files, without spaces and line ends, which pages set anew. */
    private static String everything(SortedMap<String, byte[]> files) throws IOException {
        StringBuilder all = new StringBuilder();
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            all.append(file.getKey()).append(new String(file.getValue(), UTF_8).replaceAll("\r\n[ \t]", ""));
            if (file.getKey().endsWith(".pdf")) {
                try (PDDocument document = Loader.loadPDF(file.getValue())) {
                    all.append(new PDFTextStripper().getText(document));
                    for (COSObjectKey key :
                            document.getDocument().getXrefTable().keySet()) {
                        told(document.getDocument().getObjectFromPool(key).getObject(), all);
                    }
                    told(document.getDocument().getTrailer(), all);
                }
            }
        }
        return squeezed(all.toString());
    }

    /** Names and strings, and streams as what they hold. References are followed by whoever goes through all objects. */
    private static void told(COSBase object, StringBuilder all) throws IOException {
        if (object instanceof COSStream stream) {
            try (var in = stream.createInputStream()) {
                all.append(new String(in.readAllBytes(), UTF_8));
            }
        }
        if (object instanceof COSDictionary dictionary) {
            for (COSName key : dictionary.keySet()) {
                all.append(key.getName()).append(' ');
                told(Objects.requireNonNull(dictionary.getItem(key)), all);
            }
        } else if (object instanceof COSArray array) {
            for (COSBase item : array) {
                told(item, all);
            }
        } else if (object instanceof COSString string) {
            all.append(string.getString()).append(' ');
        } else if (object instanceof COSName name) {
            all.append(name.getName()).append(' ');
        }
    }

    private static String squeezed(String text) {
        return text.replaceAll("[\\s\\u00a0\\u00ad]+", "").replace("\\\"", "\"");
    }

    /** What is left out and stands nowhere else: an employer is often the integrator, a holder has a tag. */
    private static Set<String> leftOut(Cell cell) {
        List<InternalPart> parts = InternalPart.of(cell.copies());
        Map<Boolean, List<String>> texts = cell.statements().stream()
                .collect(Collectors.partitioningBy(
                        statement -> parts.stream().anyMatch(part -> part.holds(statement)),
                        Collectors.mapping(Statement::shown, Collectors.toList())));
        String kept = squeezed(String.join("\n", texts.getOrDefault(false, List.of())));
        return texts.getOrDefault(true, List.of()).stream()
                .map(OutsideCopyTest::squeezed)
                .filter(text -> text.length() >= SHORTEST && !kept.contains(text))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The files attached to the safety file. */
    private static SortedMap<String, byte[]> attached(SortedMap<String, byte[]> files) throws IOException {
        SortedMap<String, byte[]> attached = new TreeMap<>();
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            if (file.getKey().endsWith("-safety-file.pdf")) {
                try (PDDocument document = Loader.loadPDF(file.getValue())) {
                    for (PDComplexFileSpecification one : new PDDocumentNameDictionary(document.getDocumentCatalog())
                            .getEmbeddedFiles()
                            .getNames()
                            .values()) {
                        attached.put(one.getFilename(), one.getEmbeddedFile().toByteArray());
                    }
                }
            }
        }
        return attached;
    }

    /** The same as a folder somebody saved them to. */
    private record Saved(SortedMap<String, byte[]> files) implements World {

        @Override
        public List<Entry> entries() {
            List<Entry> entries = new ArrayList<>();
            files.forEach((path, bytes) -> {
                if (!path.equals("dossier.json")) {
                    entries.add(Entry.held(path, bytes));
                }
            });
            return entries;
        }

        @Override
        public LocalDate today() {
            return LocalDate.parse("2026-11-25");
        }
    }

    /** Nothing of it is in the copy, and the copy can be recomputed to what it holds. */
    private String holds(Generator.Generated generated, int fewest) throws IOException {
        Cell cell = generated.cell().orElseThrow();
        SortedMap<String, byte[]> files = generated.files().orElseThrow();
        Set<String> leftOut = leftOut(cell);
        assertThat(leftOut).hasSizeGreaterThanOrEqualTo(fewest);
        String everything = everything(files);
        assertThat(everything).contains("leftoutofthiscopy", squeezed("What was signed is more than this copy holds"));
        for (String secret : leftOut) {
            assertThat(everything.contains(secret)).as(secret).isFalse();
        }
        assertThat(everything.contains("zanzibarite")).isFalse();

        SortedMap<String, byte[]> attached = attached(files);
        Findings findings = new Findings();
        Cell copy = Cell.read(new Saved(attached), findings).orElseThrow();
        assertThat(findings.sorted()).isEmpty();
        assertThat(copy.substance().digest()).isEqualTo(cell.substance().digest());
        Dossier dossier = Composition.compose(copy);
        assertThat(Canonical.json(dossier)).isEqualTo(new String(attached.get("dossier.json"), UTF_8));
        assertThat(dossier.values()).isEqualTo(Composition.compose(cell).values());
        assertThat(dossier.digests())
                .extracting(Dossier.Signable::digest)
                .isEqualTo(Composition.compose(cell).digests().stream()
                        .map(Dossier.Signable::digest)
                        .toList());
        assertThat(dossier.digests())
                .filteredOn(Dossier.Signable::leftOut)
                .extracting(Dossier.Signable::covers)
                .contains("file", "identity", "registers");
        return everything;
    }

    @ParameterizedTest
    @ValueSource(strings = {"kettlebrook-palletising", "farrowmere-kitting", "marrowdale-refit", "stonewick-tending"})
    void ofAnExampleHoldsNoneOfItsInternalParts(String example) throws IOException {
        copy(Path.of("..", "examples", example, "src", "main", "cell"));
        if (!Files.readString(folder.resolve("cell.yaml")).contains("\ncopies:")) {
            append("cell.yaml", WITHOUT);
        }

        holds(generated(), 3);
    }

    @Test
    void ofAHostileLayoutHoldsNothingOfWhatThePlantMarked() throws IOException {
        copy(BASE);
        append(
                "cell.yaml",
                WITHOUT
                        + "  internal: [\"open-points/*/what\", people/*/employer, instruments/*/serial, sheets/posted/*/at]\n");
        Files.writeString(folder.resolve("people.yaml"), """
                cellfile: 1 # zanzibarite
                people:
                  - {tag: ilse, name: I. Lorne, "employer":"Quagmire \\"Works\\"
                      of Obermorast", roles: [measures, checks], # zanzibarite
                      competence: 'Engineer since ''Wolkenkuckuck''',
                      "holds": ["ISO 13855:2010", "ISO 13857:2008", "ISO 13850:2015", "ISO 13849-1:2015", "ISO 10218-1:2011"]}
                """);
        Files.writeString(folder.resolve("registers.yaml"), """
                cellfile: 1
                mode-keys:
                  - {number: "K-17", selector: selector, holder: ilse, received: 2026-10-06}
                  - number: "K-18"
                    selector: selector
                    kept-at: >- # zanzibarite
                      behind the Xylophon
                      of the Nachtportier

                    received: 2026-10-06
                no-spares: sunk in the Moorteich
                  by daylight

                open-points:
                  - tag: point
                    what: fetch the Trampelpfad key from the Nachtportier
                    owner: ilse
                    since: 2026-10-06
                    until: 2027-01-01
                    before-release: yes
                """.replace("\n", "\r\n"));

        Generator.Generated generated = generated();

        assertThat(generated.verdict().findings())
                .extracting(finding -> finding.sentence())
                .anyMatch(sentence -> sentence.contains("Trampelpfad"));
        assertThat(holds(generated, 7))
                .doesNotContain("Quagmire", "Wolkenkuckuck", "Xylophon", "Nachtportier", "Moorteich", "Trampelpfad")
                .contains("whattheplantmarkedasinternalunderopen-points/*/what");
    }

    @Test
    void whoeverSavesItsFilesAndWorksOnThemIsToldSo() throws IOException {
        copy(BASE);
        append("cell.yaml", WITHOUT);
        SortedMap<String, byte[]> attached = attached(generated().files().orElseThrow());

        Generator.Generated again = new Generator().generate(new Saved(attached));

        assertThat(again.verdict().findings())
                // nobody signed this cell or reviewed its words, and it has no plan
                .filteredOn(finding -> !finding.id().words().matches("(sign-off|language|plan)\\..*"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.id().words()).isEqualTo("copies.left-out"));
        assertThat(attached(again.files().orElseThrow()))
                .allSatisfy((name, bytes) -> {
                    if (!name.equals("printed.json")) { // what bars release is another thing now
                        assertThat(bytes).isEqualTo(attached.get(name));
                    }
                })
                .hasSameSizeAs(attached);
    }

    @Test
    void whatLiesInTheFolderAndBelongsToNoDescriptionStaysThere() throws IOException {
        copy(BASE);
        append("cell.yaml", WITHOUT);
        Files.writeString(folder.resolve("wages.csv"), "run,time [s]\n1,2\n");
        Files.createDirectories(folder.resolve("signed"));
        String text = "substance 1 of small-cell\n";
        String kept = "signed/" + Substance.parse(text).orElseThrow().digest().substring(0, 16) + ".txt";
        Files.writeString(folder.resolve(kept), text);

        assertThat(attached(generated().files().orElseThrow()).keySet())
                .contains("left-out.yaml", "runs/warm.csv")
                .doesNotContain("wages.csv", kept);
    }

    @Test
    void aFileThatHasTheNameOfTheListKeepsIt() throws IOException {
        copy(BASE);
        append("cell.yaml", WITHOUT);
        Files.move(folder.resolve("people.yaml"), folder.resolve("left-out.yaml"));

        SortedMap<String, byte[]> attached = attached(generated().files().orElseThrow());

        assertThat(new String(attached.get("left-out.yaml"), UTF_8)).contains("people:");
        assertThat(new String(attached.get("left-out-2.yaml"), UTF_8)).contains("left-out:");
    }

    @Test
    void aFileThatHoldsEverythingSaysNothingOfCopies() throws IOException {
        copy(BASE);

        assertThat(everything(generated().files().orElseThrow()))
                .contains(squeezed("I. Lorne"), squeezed("key box in the shift office"))
                .doesNotContain("leftoutofthiscopy", squeezed("more than this copy holds"));
    }
}
