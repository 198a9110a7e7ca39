package org.cellfile.dossier;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What is signed: everything stated about a cell and every value derived from it, chapter by chapter. Comments and layout, the day
 * the description speaks of and the sign-offs themselves are not in it, so that none of them voids a sign-off; any number does.
 *
 * <p>The digest of a chapter is the SHA-256 (FIPS 180-4) of its lines in UTF-8, each ended by a line feed; that of the whole is the
 * SHA-256 of the digests of its chapters in order. {@link #text} is what people keep of what was signed.
 */
public final class Substance {

    /** What a sign-off covers when it covers all of it. */
    public static final String WHOLE = "file";

    private static final String HEAD = "substance 1 of ";
    private static final String CHAPTER = "chapter ";

    /** Lines of all parts in the order of their paths. */
    private static final Comparator<Statement> ORDER =
            Comparator.comparing(Statement::path).thenComparing(Statement::value);

    private final String cellId;
    private final SortedMap<String, Part> parts;

    /**
     * One chapter's.
     *
     * @param statements sorted by path; empty where the chapter was left out of a copy
     * @param digest in lower-case hexadecimal digits
     */
    public record Part(String chapter, List<Statement> statements, String digest) {

        static Part of(String chapter, List<Statement> statements) {
            List<Statement> sorted = statements.stream().sorted(ORDER).toList();
            return new Part(chapter, sorted, Digest.sha256(text(chapter, sorted)));
        }

        private static String text(String chapter, List<Statement> statements) {
            return CHAPTER + chapter + "\n"
                    + statements.stream()
                            .map(statement -> statement.line() + "\n")
                            .collect(Collectors.joining());
        }
    }

    private Substance(String cellId, SortedMap<String, Part> parts) {
        this.cellId = cellId;
        this.parts = parts;
    }

    /**
     * Of what was stated and derived.
     *
     * @param chapters what belongs to each chapter
     */
    public static Substance of(String cellId, Map<String, List<Statement>> chapters) {
        SortedMap<String, Part> parts = new TreeMap<>();
        chapters.forEach((chapter, statements) -> parts.put(chapter, Part.of(chapter, statements)));
        return new Substance(cellId, parts);
    }

    /** The same where the digests of some chapters are taken over, because something of these was left out. */
    public Substance carrying(Map<String, String> digests) {
        SortedMap<String, Part> carried = new TreeMap<>(parts);
        digests.forEach((chapter, digest) -> carried.put(
                chapter, new Part(chapter, part(chapter).map(Part::statements).orElse(List.of()), digest)));
        return new Substance(cellId, carried);
    }

    /** The chapters in order. */
    public List<Part> parts() {
        return List.copyOf(parts.values());
    }

    /** One chapter's. */
    public Optional<Part> part(String chapter) {
        return Optional.ofNullable(parts.get(chapter));
    }

    /** Everything stated and derived. */
    public List<Statement> statements() {
        return parts.values().stream()
                .flatMap(part -> part.statements().stream())
                .toList();
    }

    /** Of all of it. */
    public String digest() {
        return Digest.sha256(HEAD + cellId + "\n"
                + parts.values().stream()
                        .map(part -> CHAPTER + part.chapter() + " " + part.digest() + "\n")
                        .collect(Collectors.joining()));
    }

    /** Of {@link #WHOLE} or of a chapter; empty when there is no such chapter. */
    public Optional<String> digest(String covers) {
        return covers.equals(WHOLE) ? Optional.of(digest()) : part(covers).map(Part::digest);
    }

    /** What is kept of it when it is signed. */
    public String text() {
        return HEAD + cellId + "\n"
                + parts.values().stream()
                        .map(part -> Part.text(part.chapter(), part.statements()))
                        .collect(Collectors.joining());
    }

    /** Reads what was kept; empty when it is something else. The positions are not known any more. */
    public static Optional<Substance> parse(String text) {
        List<String> lines = text.lines().toList();
        if (lines.isEmpty() || !lines.get(0).startsWith(HEAD)) {
            return Optional.empty();
        }
        Map<String, List<Statement>> chapters = new TreeMap<>();
        List<Statement> chapter = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            int path = end(line);
            if (path >= 0) {
                chapter.add(new Statement(line.substring(0, path), line.substring(path + 2), ""));
            } else if (line.startsWith(CHAPTER)) {
                chapter = new ArrayList<>();
                chapters.put(line.substring(CHAPTER.length()), chapter);
            } else {
                return Optional.empty();
            }
        }
        return Optional.of(of(lines.get(0).substring(HEAD.length()), chapters));
    }

    /** Where the path of a line ends; negative when the line is no statement. */
    private static int end(String line) {
        int text = line.indexOf(": \"");
        int list = line.indexOf(": [");
        return text < 0 || (list >= 0 && list < text) ? list : text;
    }
}
