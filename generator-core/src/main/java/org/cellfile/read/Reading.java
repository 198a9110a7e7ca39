package org.cellfile.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.cellfile.dossier.Digest;
import org.cellfile.dossier.Statement;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.finding.Nearest;
import org.cellfile.quantity.Dimension;
import org.cellfile.source.SourceFile;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.source.World;

/** The files of one cell's folder, read into one group of keys. */
public final class Reading {

    static final FindingId TOO_LARGE = new FindingId("read.too-large");
    static final FindingId OUTSIDE = new FindingId("read.outside-the-folder");
    static final FindingId NOT_UTF8 = new FindingId("read.not-utf-eight");
    static final FindingId UNREADABLE = new FindingId("read.unreadable");
    static final FindingId VERSION = new FindingId("read.format-version");
    static final FindingId NOTHING = new FindingId("read.no-files");
    static final FindingId TWO_FILES = new FindingId("read.key-in-two-files");
    static final FindingId NOT_NAMED = new FindingId("read.not-named");
    static final FindingId NO_SUCH_FILE = new FindingId("read.no-such-file");

    /** The version of the format this program reads. */
    private static final String VERSION_READ = "1";

    private static final String VERSION_KEY = "cellfile";

    /** Far above any real cell (the largest seen is under 200 kB); below what could exhaust the machine. */
    private static final long LARGEST = 4L << 20;

    /** Under which the digests of files stand that the sheets are made with. */
    public static final String FILE = "file";

    /** The folder with texts of what was signed. */
    public static final String SIGNED = "signed/";

    private final Findings findings;
    private final Tags tags;
    private final Map<String, World.Entry> entries = new TreeMap<>();
    private final Map<String, SourceFile> tables = new TreeMap<>();
    private final Set<String> tablesNamed = new TreeSet<>();
    private final List<SourceFile> words = new ArrayList<>();
    private final Map<String, Statement> needed = new TreeMap<>();
    private final List<SourceFile> sources = new ArrayList<>();
    private final Map<String, Node.Pair> top = new TreeMap<>();
    private final List<Section> sections = new ArrayList<>();
    private final boolean whole;
    private boolean complete = true;

    private Reading(Findings findings, boolean whole) {
        this.findings = findings;
        this.whole = whole;
        this.tags = new Tags(findings);
    }

    /** A section that stands for one that is missing, so that reading can go on without reporting it again. */
    static Section silent(String name, Span where) {
        return new Section(name, where, List.of(), new Reading(new Findings(), true));
    }

    /**
     * A cell's top keys and the files they came from.
     *
     * @param files empty when one of them could not be read: what it holds would only be reported as missing
     */
    public record Sources(Section top, List<SourceFile> files, Reading reading) {

        /** Reports references that lead nowhere and files nobody named; to be called when all was read. */
        public void finish() {
            top.close();
            reading.sections.forEach(Section::reportKeys);
            reading.tags.resolve();
            reading.unnamed();
        }

        /** Everything stated in the files, and in the tables they name; to be called when all was read. */
        public List<Statement> statements() {
            List<Statement> statements = new ArrayList<>(Statements.of(reading.top.values()));
            reading.tables.forEach((path, file) -> {
                if (reading.tablesNamed.contains(path)) {
                    statements.addAll(CsvFile.statements(file));
                }
            });
            reading.words.forEach(file -> statements.addAll(WordsFile.statements(file)));
            statements.addAll(reading.needed.values());
            return List.copyOf(statements);
        }
    }

    /** Reads every YAML file of the folder and every text of what was signed; CSV files are read when a key names them. */
    public static Sources read(World world, Findings findings) {
        Reading reading = new Reading(findings, world.whole());
        for (World.Entry entry : world.entries()) {
            reading.entries.put(entry.path(), entry);
            if (entry.size() == World.Entry.UNREADABLE) {
                reading.file(entry);
            } else if (entry.path().endsWith(".yaml") || entry.path().endsWith(".yml")) {
                reading.file(entry).ifPresent(reading::merge);
            } else if (isSignedText(entry.path())) {
                reading.file(entry);
            } else if (WordsFile.tag(entry.path()).isPresent()) {
                reading.file(entry).ifPresent(reading.words::add);
            } else if (entry.path().endsWith(".csv")) {
                reading.file(entry).ifPresent(file -> reading.tables.put(file.path(), file));
            }
        }
        SourceFile first = reading.sources.isEmpty() ? SourceFile.unread(".") : reading.sources.get(0);
        if (reading.top.isEmpty() && reading.complete) {
            reading.complete = false;
            findings.add(Finding.refuses(
                    NOTHING,
                    "",
                    first.whole(),
                    "no YAML file that describes a cell lies in this folder",
                    "name the folder that holds the cell's files, by custom src/main/cell"));
        }
        return new Sources(
                new Section("the cell's files", first.whole(), reading.top.values(), reading),
                reading.complete ? reading.sources : List.of(),
                reading);
    }

    /** True when a file of that path is a text of what was signed. */
    public static boolean isSignedText(String path) {
        return path.startsWith(SIGNED) && path.endsWith(".txt");
    }

    private void merge(SourceFile file) {
        Optional<Node.Mapping> content = YamlFile.read(file, findings);
        complete &= content.isPresent();
        content.ifPresent(mapping -> {
            version(mapping);
            for (Node.Pair pair : mapping.pairs()) {
                String key = pair.key().text();
                if (key.equals(VERSION_KEY)) {
                    continue;
                }
                Node.Pair before = top.putIfAbsent(key, pair);
                if (before != null) {
                    complete = false;
                    findings.add(Finding.refuses(
                            TWO_FILES,
                            "",
                            pair.key().where(),
                            "`" + key + "` stands in this file and at "
                                    + before.key().where().position(),
                            "keep a top-level key in one file, so that there is one place to look for it"));
                }
            }
        });
    }

    private void version(Node.Mapping mapping) {
        Optional<Node.Pair> version = mapping.pairs().stream()
                .filter(pair -> pair.key().text().equals(VERSION_KEY))
                .findFirst();
        if (version.isEmpty()) {
            findings.add(Finding.refuses(
                    VERSION,
                    "",
                    mapping.where(),
                    "the file does not say in which version of the format it is written",
                    "begin it with `cellfile: 1`"));
        } else if (!(version.get().value() instanceof Node.Scalar scalar
                && scalar.text().equals(VERSION_READ))) {
            complete = false;
            findings.add(Finding.refuses(
                    VERSION,
                    "",
                    version.get().value().where(),
                    "this version of the format is not known to this program",
                    "the version it reads is 1; a newer file needs a newer program"));
        }
    }

    private Optional<SourceFile> file(World.Entry entry) {
        SourceFile unread = SourceFile.unread(entry.path());
        if (!entry.inside()) {
            unreadable(
                    OUTSIDE,
                    unread.whole(),
                    "this is a link that leads out of the cell's folder, and it was not opened",
                    "put the file itself into the folder");
            return Optional.empty();
        }
        if (entry.size() > LARGEST) {
            unreadable(
                    TOO_LARGE,
                    unread.whole(),
                    "the file holds " + entry.size() + " bytes, more than the " + LARGEST + " that are read",
                    "a description of a cell is far smaller; see whether another file was saved under this name");
            return Optional.empty();
        }
        try (InputStream stream = entry.content().open()) {
            return text(entry.path(), stream.readNBytes((int) LARGEST)).map(file -> {
                sources.add(file);
                return file;
            });
        } catch (IOException failed) {
            unreadable(
                    UNREADABLE,
                    unread.whole(),
                    "the file could not be read: " + failed.getMessage(),
                    "see whether it can be opened by the account this runs under");
            return Optional.empty();
        }
    }

    private Optional<SourceFile> text(String path, byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            List<String> before = (text + "x").lines().toList();
            String last = before.get(before.size() - 1);
            unreadable(
                    NOT_UTF8,
                    new Span(SourceFile.unread(path), before.size(), last.codePointCount(0, last.length()), 0),
                    "byte " + (in.position() + 1) + " of the file is not text in UTF-8",
                    "save the file as UTF-8; in other encodings a decimal or a unit can change unseen");
            return Optional.empty();
        }
        return Optional.of(new SourceFile(path, text.startsWith("\uFEFF") ? text.substring(1) : text));
    }

    Optional<CsvFile> csv(Stated<String> path, Map<String, Dimension> columns) {
        SourceFile table = tables.get(path.characters());
        if (table == null) {
            findings.add(Finding.refuses(
                    NO_SUCH_FILE,
                    "",
                    path.where(),
                    "there is no file `" + path.characters() + "` in the cell's folder",
                    tables.isEmpty()
                            ? "put it beside the YAML files and write its path from the cell's folder"
                            : "CSV files that are there: " + Nearest.listed(path.characters(), tables.keySet())));
            return Optional.empty();
        }
        tablesNamed.add(table.path());
        return Optional.of(CsvFile.read(table, columns, findings));
    }

    /** False when files that bear something out may lie elsewhere. */
    boolean whole() {
        return whole;
    }

    /** The paths of the folder's files that look so. */
    List<String> paths(String pattern) {
        return entries.keySet().stream().filter(path -> path.matches(pattern)).toList();
    }

    /** The file of that path in the folder, of whatever sort; a table named in this way was not left out. */
    Optional<World.Entry> entry(Stated<String> path) {
        tablesNamed.add(path.characters());
        return Optional.ofNullable(entries.get(path.characters()));
    }

    /** A file needed byte for byte counts for signing by its digest. */
    void needed(Stated<String> path, byte[] bytes) {
        needed.put(
                path.characters(),
                Statement.of(
                        FILE + "/" + Statement.step(path.characters()) + "/sha256",
                        Digest.sha256(bytes),
                        path.where().position()));
    }

    private void unnamed() {
        tables.forEach((path, file) -> {
            if (!tablesNamed.contains(path)) {
                findings.add(Finding.warns(
                        NOT_NAMED,
                        "",
                        file.whole(),
                        "no stop test names this file, and it was left out",
                        "name it under `runs-file`, or take it out of the folder"));
            }
        });
    }

    /** True when the files are a copy of a description from which something was left out. */
    boolean isCopy() {
        return top.containsKey(Redaction.KEY);
    }

    Findings findings() {
        return findings;
    }

    Tags tags() {
        return tags;
    }

    /** Notes a section, whose keys are looked at when all was read. */
    void opened(Section section) {
        sections.add(section);
    }

    private void unreadable(FindingId id, Span where, String sentence, String help) {
        complete = false;
        findings.add(Finding.refuses(id, "", where, sentence, help));
    }
}
