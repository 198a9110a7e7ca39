package org.cellfile.subject.function;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.function.SafetyFunction.Element;

/** The chain of a function: from an input by way of its logic to an output, each subsystem once. */
final class ChainFaults {

    /** It has no input or no output. */
    static final FindingId OPEN = new FindingId("function.chain-open");

    /** Something stands before what it comes after. */
    static final FindingId ORDER = new FindingId("function.chain-order");

    static final FindingId TWICE = new FindingId("function.subsystem-twice");

    private final SafetyFunction function;
    private final String tag;

    ChainFaults(SafetyFunction function) {
        this.function = function;
        this.tag = function.tag().characters();
    }

    List<Finding> found() {
        List<Finding> found = new ArrayList<>(twice());
        boolean read = function.chain().stream()
                .allMatch(element -> element.place().value().isPresent());
        if (read && !function.chain().isEmpty()) {
            open().ifPresent(found::add);
            order().ifPresent(found::add);
        }
        return found;
    }

    private Optional<Finding> open() {
        List<String> missing = Stream.of("input", "output")
                .filter(place -> function.chain().stream()
                        .noneMatch(element -> element.place().characters().equals(place)))
                .toList();
        return missing.isEmpty()
                ? Optional.empty()
                : Optional.of(Finding.refuses(
                        OPEN,
                        tag,
                        function.tag().where(),
                        "the chain of `" + tag + "` has no " + String.join(" and no ", missing),
                        "list every subsystem between what notices and what switches the power, each with its place"));
    }

    private Optional<Finding> order() {
        for (int i = 1; i < function.chain().size(); i++) {
            Element before = function.chain().get(i - 1);
            Element element = function.chain().get(i);
            if (rank(element) < rank(before)) {
                return Optional.of(Finding.refuses(
                        ORDER,
                        tag,
                        element.place().where(),
                        "in the chain of `" + tag + "` " + words(element) + " comes after " + words(before),
                        "list the chain as the signal goes: inputs, logic, outputs; see which place is the wrong one"));
            }
        }
        return Optional.empty();
    }

    private static int rank(Element element) {
        return SafetyFunction.PLACES.indexOf(element.place().characters());
    }

    private static String words(Element element) {
        return "`" + element.subsystem().characters() + "` (" + element.place().characters() + ")";
    }

    private List<Finding> twice() {
        List<Finding> found = new ArrayList<>();
        Map<String, Stated<String>> first = new HashMap<>();
        for (Element element : function.chain()) {
            Stated<String> subsystem = element.subsystem();
            subsystem.value().ifPresent(named -> {
                Stated<String> before = first.putIfAbsent(named, subsystem);
                if (before != null) {
                    found.add(Finding.refuses(
                                    TWICE,
                                    tag,
                                    subsystem.where(),
                                    "`" + named + "` stands twice in the chain of `" + tag + "`",
                                    "list it once, with all links it carries; two devices of one sort are two subsystems")
                            .because(List.of("the first time at "
                                    + before.where().position() + "; its failures would count twice")));
                }
            });
        }
        return found;
    }
}
