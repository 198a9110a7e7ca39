package org.cellfile.read;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import org.cellfile.dossier.Statement;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.source.SourceFile;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;

/** A file with the fixed wording of a language: keys and their words as in {@code key = words}, in UTF-8. */
public final class WordsFile {

    /** The folder such files lie in; also the key under which their words are signed. */
    public static final String FOLDER = "languages";

    private static final String ENDING = ".properties";

    /** A line of it cannot be read. */
    static final FindingId LINE = new FindingId("language.line");

    private WordsFile() {}

    /** The path of the file of a language. */
    public static String path(String tag) {
        return FOLDER + "/" + tag + ENDING;
    }

    /** The tag of the language that a file of that path is for; empty when it is no such file. */
    public static Optional<String> tag(String path) {
        return path.startsWith(FOLDER + "/") && path.endsWith(ENDING) && path.indexOf('/') == path.lastIndexOf('/')
                ? Optional.of(path.substring(FOLDER.length() + 1, path.length() - ENDING.length()))
                : Optional.empty();
    }

    /** Its words by key, each where it stands; what cannot be read is reported. */
    public static Map<String, Stated<String>> read(SourceFile file, Findings findings) {
        Map<String, Stated<String>> words = new LinkedHashMap<>();
        List<String> lines = file.lines();
        for (int i = 0; i < lines.size(); i++) {
            int first = i;
            StringBuilder whole = new StringBuilder(lines.get(i));
            while (!comment(lines.get(first)) && goesOn(lines.get(i)) && i + 1 < lines.size()) {
                whole.append('\n').append(lines.get(++i));
            }
            Span where = new Span(
                    file,
                    first + 1,
                    1,
                    lines.get(first).codePointCount(0, lines.get(first).length()));
            for (Map.Entry<String, String> entry :
                    entries(whole.toString(), where, findings).entrySet()) {
                Stated<String> stated = new Stated.Written<>(entry.getValue(), where, entry.getValue());
                Stated<String> before = words.putIfAbsent(entry.getKey(), stated);
                if (before != null) {
                    findings.add(Finding.refuses(
                            LINE,
                            "",
                            where,
                            "`" + entry.getKey() + "` stands in line "
                                    + before.where().line() + " already",
                            "keep one of the two lines"));
                }
            }
        }
        return words;
    }

    private static boolean comment(String line) {
        String text = line.stripLeading();
        return text.startsWith("#") || text.startsWith("!");
    }

    /** A line that ends in a backslash that is not written twice goes on in the next. */
    private static boolean goesOn(String line) {
        return (line.length() - line.replaceFirst("\\\\+$", "").length()) % 2 == 1;
    }

    private static Map<String, String> entries(String line, Span where, Findings findings) {
        Properties one = new Properties();
        try {
            one.load(new StringReader(line));
        } catch (IllegalArgumentException escape) {
            findings.add(Finding.refuses(
                    LINE,
                    "",
                    where,
                    "this line holds a `\\u` that is not followed by the four hexadecimal digits of a character",
                    "write the character itself; the file is read as UTF-8"));
        } catch (IOException neverFromMemory) {
            throw new UncheckedIOException(neverFromMemory);
        }
        Map<String, String> entries = new LinkedHashMap<>();
        one.stringPropertyNames().forEach(key -> entries.put(key, one.getProperty(key)));
        return entries;
    }

    /** The same file as it leaves the plant; each line keeps its number. */
    public static SourceFile withoutComments(SourceFile file) {
        StringBuilder text = new StringBuilder();
        boolean within = false;
        for (String line : file.lines()) {
            boolean comment = !within && comment(line);
            text.append(comment ? "" : line).append('\n');
            within = !comment && goesOn(line);
        }
        return new SourceFile(file.path(), text.toString());
    }

    /** What counts of it for signing and comparing. */
    static List<Statement> statements(SourceFile file) {
        List<Statement> statements = new ArrayList<>();
        String head = FOLDER + "/" + Statement.step(tag(file.path()).orElse(file.path())) + "/";
        read(file, new Findings())
                .forEach((key, words) -> statements.add(Statement.of(
                        head + Statement.step(key),
                        words.characters(),
                        words.where().position())));
        return statements;
    }
}
