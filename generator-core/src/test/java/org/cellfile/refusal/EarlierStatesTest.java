package org.cellfile.refusal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.cellfile.Comparison;
import org.cellfile.FolderWorld;
import org.cellfile.Generator;
import org.cellfile.GitWorld;
import org.cellfile.NoSuchState;
import org.cellfile.compare.Compared;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.revwalk.RevCommit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A state is a revision of a folder, or what a PDF holds; what cannot be got at is told in a sentence. All figures are constructed. */
class EarlierStatesTest {

    private static final PersonIdent SOMEBODY = new PersonIdent(
            "I. Lorne",
            "lorne@example.org",
            ZonedDateTime.of(2026, 11, 20, 8, 0, 0, 0, ZoneOffset.UTC).toInstant(),
            ZoneOffset.UTC);

    @TempDir
    private Path temporary;

    private Path root;
    private Path cell;

    @BeforeEach
    void twoRevisions() throws IOException, GitAPIException {
        root = temporary.resolve("works");
        cell = root.resolve("cells/small");
        BaseCell.copyTo(cell);
        try (Git git =
                Git.init().setDirectory(root.toFile()).setInitialBranch("main").call()) {
            commit(git, "first");
            git.tag()
                    .setName("v1")
                    .setTagger(SOMEBODY)
                    .setSigned(false)
                    .setMessage("first")
                    .call();
            BaseCell.change(cell, "robots.yaml", "mass: 10 kg", "mass: 9 kg");
            BaseCell.change(cell, "robots.yaml", "handled-mass: 30 kg", "handled-mass: 29 kg");
            commit(git, "lighter");
        }
    }

    private static RevCommit commit(Git git, String message) throws GitAPIException {
        git.add().addFilepattern(".").call();
        return git.commit()
                .setMessage(message)
                .setAuthor(SOMEBODY)
                .setCommitter(SOMEBODY)
                .setSign(false)
                .call();
    }

    private static Compared compared(Comparison.Source older, Comparison.Source newer) {
        return ((Comparison.Told) Comparison.of(older, newer)).compared();
    }

    private Compared since(String revision) throws NoSuchState {
        return compared(Comparison.since(cell, revision), Comparison.at(cell));
    }

    @ParameterizedTest
    @ValueSource(strings = {"v1", "main~1", "refs/tags/v1", "HEAD^"})
    void aFolderIsReadAsOfARevision(String revision) throws NoSuchState {
        Compared compared = since(revision);

        assertThat(compared.groups()).extracting(group -> group.id()).containsExactly("tool", "records");
        assertThat(compared.older().refused()).isEmpty();
        assertThat(compared.older().source()).contains("revision " + revision + " (commit ");
    }

    @Test
    void whatIsNotCommittedIsTheNewerState() throws Exception {
        BaseCell.change(cell, "safeguards.yaml", "resolution: 14 mm", "resolution: 20 mm");

        assertThat(since("HEAD").groups()).extracting(group -> group.id()).containsExactly("safeguard");
    }

    @Test
    void aRevisionIsReadWithItsTablesAndEvidenceAndWithoutHiddenFiles() throws Exception {
        try (Git git = Git.open(root.toFile())) {
            Files.writeString(cell.resolve(".draft.yaml"), "not: read");
            commit(git, "hidden");
        }
        List<String> paths = GitWorld.of(cell, "HEAD").entries().stream()
                .map(entry -> entry.path())
                .toList();

        assertThat(paths).contains("runs/warm.csv", "evidence/sheet.txt").isSorted();
        assertThat(paths)
                .isEqualTo(FolderWorld.of(cell).entries().stream()
                        .map(entry -> entry.path())
                        .toList());
    }

    @Test
    void aLinkInARevisionIsNotFollowed() throws Exception {
        try (Git git = Git.open(root.toFile())) {
            Files.createSymbolicLink(cell.resolve("more.yaml"), Path.of("robots.yaml"));
            commit(git, "link");
        }

        assertThat(Comparison.of(Comparison.since(cell, "HEAD"), Comparison.at(cell)))
                .isInstanceOf(Comparison.Unread.class);
    }

    @Test
    void nothingIsWrittenAndNoProgramStarted() throws Exception {
        SortedMap<String, Long> before = files();
        since("v1");

        assertThat(files()).isEqualTo(before);
        assertThat(ProcessHandle.current().children()).isEmpty();
    }

    private SortedMap<String, Long> files() throws IOException {
        SortedMap<String, Long> files = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(root)) {
            for (Path path : paths.toList()) {
                files.put(path.toString(), Files.getLastModifiedTime(path).toMillis());
            }
        }
        return files;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "-",
                "--upload-pack=touch x",
                "-v1",
                " v1",
                "v2",
                "v1:cells/small/robots.yaml",
                "HEAD^{tree}",
                "main~9",
                "..",
                "@{upstream}",
                "a b",
                "\u0000",
                "0000000000000000000000000000000000000001",
                "v1..main",
                "~",
                "^",
                ":/first"
            })
    void aRevisionThatIsNoneIsRefused(String revision) {
        assertThatThrownBy(() -> since(revision))
                .isInstanceOf(NoSuchState.class)
                .hasMessageContaining("`" + revision + "`");
    }

    @Test
    void whatCanMeanTwoRevisionsIsRefused() throws Exception {
        try (Git git = Git.open(root.toFile())) {
            git.branchCreate().setName("v1").call();
        }

        assertThatThrownBy(() -> since("v1"))
                .isInstanceOf(NoSuchState.class)
                .hasMessageContaining("can mean more than one revision");
        assertThat(since("refs/heads/v1").same()).isTrue();
    }

    @Test
    void aFolderThatWasNotThereIsRefused() throws Exception {
        Path later = BaseCell.copyTo(root.resolve("cells/later"));

        assertThatThrownBy(() -> Comparison.since(later, "v1"))
                .isInstanceOf(NoSuchState.class)
                .hasMessage("the revision `v1` holds no folder cells/later");
    }

    @Test
    void aFolderOutsideARepositoryIsRefused() {
        Path outside = BaseCell.copyTo(temporary.resolve("outside"));

        assertThatThrownBy(() -> Comparison.since(outside, "v1"))
                .isInstanceOf(NoSuchState.class)
                .hasMessageContaining("lies in no Git repository");
    }

    @Test
    void aBrokenRepositoryIsRefused() throws Exception {
        try (Stream<Path> objects = Files.walk(root.resolve(Constants.DOT_GIT + "/objects"))) {
            for (Path object : objects.filter(Files::isRegularFile).toList()) {
                Files.writeString(object.resolveSibling("gone"), "");
                Files.delete(object);
            }
        }

        assertThatThrownBy(() -> since("v1")).isInstanceOf(NoSuchState.class);
    }

    private byte[] safetyFile() {
        return Objects.requireNonNull(new Generator()
                .generate(FolderWorld.of(cell))
                .files()
                .orElseThrow()
                .get("small-cell-safety-file.pdf"));
    }

    private Path pdf(byte[] bytes) throws IOException {
        return Files.write(temporary.resolve("earlier.pdf"), bytes);
    }

    @Test
    void theSourcesOfAnEarlierPdfAreAState() throws Exception {
        Path earlier = pdf(safetyFile());

        Compared unchanged = compared(Comparison.at(earlier), Comparison.at(cell));
        assertThat(unchanged.same()).isTrue();
        assertThat(unchanged.older().refused()).isEmpty();

        BaseCell.change(cell, "robots.yaml", "length: 200 mm", "length: 150 mm");
        assertThat(compared(Comparison.at(earlier), Comparison.at(cell)).groups())
                .extracting(group -> group.id())
                .containsExactly("tool");
    }

    @Test
    void whatIsNoPdfOfACellIsRefused() throws Exception {
        refused(pdf("no PDF".getBytes(StandardCharsets.UTF_8)), "does not begin as a PDF does");
        refused(pdf(new byte[0]), "does not begin as a PDF does");
        byte[] good = safetyFile();
        refused(pdf(Arrays.copyOf(good, 2000)), "cannot be");
        refused(pdf(embedding(Map.of())), "holds no sources of a cell");
        refused(pdf(embedding(Map.of("cell.yaml", new byte[9 << 20]))), "embedded files");
        Map<String, byte[]> many = new TreeMap<>();
        for (int i = 0; i <= 300; i++) {
            many.put("file-" + i + ".yaml", new byte[] {'#'});
        }
        refused(pdf(embedding(many)), "more than 300 files are embedded");
        refused(pdf(encrypted(good)), "encrypted");
        refused(temporary.resolve("not-there.pdf"), "there is no folder and no PDF");
    }

    private static void refused(Path pdf, String because) {
        assertThatThrownBy(() -> Comparison.at(pdf))
                .isInstanceOf(NoSuchState.class)
                .hasMessageContaining(because);
    }

    private static byte[] embedding(Map<String, byte[]> files) throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage());
            Map<String, PDComplexFileSpecification> named = new TreeMap<>();
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                PDComplexFileSpecification specification = new PDComplexFileSpecification();
                specification.setFile(file.getKey());
                specification.setFileUnicode(file.getKey());
                PDEmbeddedFile content =
                        new PDEmbeddedFile(document, new ByteArrayInputStream(file.getValue()), COSName.FLATE_DECODE);
                specification.setEmbeddedFile(content);
                specification.setEmbeddedFileUnicode(content);
                named.put(file.getKey(), specification);
            }
            PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
            tree.setNames(named);
            PDDocumentNameDictionary names = new PDDocumentNameDictionary(document.getDocumentCatalog());
            names.setEmbeddedFiles(tree);
            document.getDocumentCatalog().setNames(names);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        }
    }

    private static byte[] encrypted(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            document.protect(new StandardProtectionPolicy("owner", "", new AccessPermission()));
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        }
    }
}
