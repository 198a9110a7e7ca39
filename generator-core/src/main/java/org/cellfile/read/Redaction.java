package org.cellfile.read;

import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.cellfile.dossier.Statement;
import org.cellfile.finding.Findings;
import org.cellfile.source.SourceFile;

/**
 * A file of a description from which single values were taken. In the place of each stands {@link #MARK}, always in the same
 * characters, so that not even the length of the value is told. Comments are taken out as well, since they may tell what was left
 * out. Every line stays where it was; what follows a value on its line may move.
 */
public final class Redaction {

    /** What stands in the place of a value, in the files and in print. */
    public static final String MARK = "left out of this copy";

    /** The key that tells that a description is a copy from which something was left out. */
    public static final String KEY = "left-out";

    /** Quoted, so that it is one value wherever the one before could stand. */
    private static final String WRITTEN = '"' + MARK + '"';

    /** What stands between values is structure but for comments and, before the document, directives. */
    private static final Pattern COMMENT = Pattern.compile("[ \\t]*[#%][^\\r\\n]*");

    /** Of a text in a block of its own: a comment in the line that opens it. */
    private static final Pattern COMMENT_OF_BLOCK = Pattern.compile("(?<=\\A[|>][-+0-9]{0,2})[ \\t]+#[^\\r\\n]*");

    private static final Pattern NO_LINE_END = Pattern.compile("[^\\r\\n]");

    private final int[] characters;
    private final Set<Integer> leftOut;
    private final StringBuilder text = new StringBuilder();
    private int done;

    /**
     * A redaction of one file.
     *
     * @param leftOut where the values begin that are left out
     */
    private Redaction(SourceFile file, Set<Integer> leftOut) {
        this.characters = file.text().codePoints().toArray();
        this.leftOut = leftOut;
    }

    /**
     * The file without its comments and without the values of some statements.
     *
     * @param file YAML that can be read
     * @throws IllegalArgumentException when it cannot
     */
    public static SourceFile of(SourceFile file, Predicate<Statement> leftOut) {
        Node.Mapping top = YamlFile.read(file, new Findings())
                .orElseThrow(() -> new IllegalArgumentException(file.path() + " cannot be read"));
        Set<Integer> values = Statements.found(top.pairs()).stream()
                .filter(found -> leftOut.test(found.statement()))
                .flatMap(found -> found.values().stream())
                .filter(value -> value.from() < value.to())
                .map(Node.Scalar::from)
                .collect(Collectors.toSet());
        Redaction redaction = new Redaction(file, values);
        redaction.copy(top);
        redaction.between(redaction.characters.length);
        return new SourceFile(file.path(), redaction.text.toString());
    }

    /** In the order written, so that what stands between two values is passed over once. */
    private void copy(Node node) {
        if (node instanceof Node.Mapping mapping) {
            mapping.pairs().forEach(pair -> {
                copy(pair.key());
                copy(pair.value());
            });
        } else if (node instanceof Node.Sequence sequence) {
            sequence.items().forEach(this::copy);
        } else if (node instanceof Node.Scalar scalar) {
            between(scalar.from());
            String written = written(scalar.from(), scalar.to());
            text.append(
                    scalar.from() < scalar.to() && leftOut.contains(scalar.from())
                            ? WRITTEN + NO_LINE_END.matcher(written).replaceAll("")
                            : COMMENT_OF_BLOCK.matcher(written).replaceFirst(""));
            done = scalar.to();
        }
    }

    private void between(int end) {
        text.append(COMMENT.matcher(written(done, end)).replaceAll(""));
        done = end;
    }

    private String written(int from, int to) {
        return new String(characters, from, to - from);
    }
}
