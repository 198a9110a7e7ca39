package org.cellfile.read;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cellfile.dossier.Statement;

/** A tree of nodes as single statements, in the order written. */
final class Statements {

    /** By what an item of a list is told from the others; the first of these keys that it has. */
    private static final List<String> LABELS =
            List.of("tag", "value", "edition", "revision", "number", "certificate", "of", "person", "name", "on");

    private final List<Found> found = new ArrayList<>();

    private Statements() {}

    /** A statement with the single values it is made of, of which only a list has several. */
    record Found(Statement statement, List<Node.Scalar> values) {}

    static List<Statement> of(Collection<Node.Pair> pairs) {
        return found(pairs).stream().map(Found::statement).toList();
    }

    static List<Found> found(Collection<Node.Pair> pairs) {
        Statements statements = new Statements();
        pairs.forEach(pair -> statements.add(Statement.step(pair.key().text()), pair.value()));
        return List.copyOf(statements.found);
    }

    private void add(String path, Node node) {
        if (node instanceof Node.Scalar scalar) {
            found.add(new Found(Statement.of(path, text(scalar), node.where().position()), List.of(scalar)));
        } else if (node instanceof Node.Mapping mapping) {
            mapping.pairs()
                    .forEach(pair -> add(path + "/" + Statement.step(pair.key().text()), pair.value()));
        } else if (node instanceof Node.Sequence sequence) {
            items(path, sequence);
        }
    }

    /** A list of single values is one statement; of a list of anything else each item is stated by itself. */
    private void items(String path, Node.Sequence sequence) {
        if (sequence.items().stream().allMatch(Node.Scalar.class::isInstance)) {
            List<Node.Scalar> values =
                    sequence.items().stream().map(Node.Scalar.class::cast).toList();
            List<String> texts = values.stream().map(Statements::text).toList();
            found.add(new Found(Statement.of(path, texts, sequence.where().position()), values));
            return;
        }
        Map<String, Integer> labelled = new HashMap<>();
        int number = 0;
        for (Node item : sequence.items()) {
            number++;
            String label = label(item).orElse(String.valueOf(number));
            int times = labelled.merge(label, 1, Integer::sum);
            add(path + "/" + Statement.step(times == 1 ? label : label + " (" + times + ")"), item);
        }
    }

    private static Optional<String> label(Node item) {
        if (!(item instanceof Node.Mapping mapping)) {
            return Optional.empty();
        }
        return LABELS.stream()
                .flatMap(key -> mapping.pairs().stream()
                        .filter(pair -> pair.key().text().equals(key))
                        .map(Node.Pair::value))
                .filter(Node.Scalar.class::isInstance)
                .map(value -> text((Node.Scalar) value))
                .findFirst();
    }

    private static String text(Node.Scalar scalar) {
        return scalar.text().strip();
    }
}
