package org.cellfile.subject.function;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.claim.Workings;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.standard.Category;
import org.cellfile.standard.LeastCategory;
import org.cellfile.trace.Drawing;
import org.cellfile.trace.Greatest;
import org.cellfile.trace.Term;

/** The level of a function, and the categories it is made of, held against what hazards and standards ask. */
final class LevelFaults {

    /** It reaches less than it needs. */
    static final FindingId TOO_LOW = new FindingId("installed.level-too-low");

    /** A subsystem has a lower category than a standard asks for. */
    static final FindingId CATEGORY = new FindingId("installed.category-too-low");

    /** Nobody says which level it needs. */
    static final FindingId NO_LEVEL = new FindingId("function.no-level");

    /** The edition sets its level, and nobody read which. */
    static final FindingId TO_READ = new FindingId("function.level-to-read");

    /** The level stated for another reason is below the one that is due anyway. */
    static final FindingId REQUIRES_LESS = new FindingId("function.requires-less");

    private final FunctionLevel level;
    private final SafetyFunction function;
    private final String tag;

    LevelFaults(FunctionLevel level) {
        this.level = level;
        this.function = level.function();
        this.tag = level.tag();
    }

    List<Finding> found() {
        List<Finding> found = new ArrayList<>();
        tooLow().ifPresent(found::add);
        found.addAll(categories());
        noLevel().ifPresent(found::add);
        toRead().ifPresent(found::add);
        requiresLess().ifPresent(found::add);
        return found;
    }

    private Optional<Finding> tooLow() {
        Optional<Quantity> required = level.required().value();
        Optional<Quantity> reached = level.reached().value();
        // A frequency that is known and belongs to no level is too high for any.
        boolean none =
                level.pfh().value().isPresent() && level.levelBySum().value().isEmpty();
        boolean less = required.flatMap(due -> reached.map(has -> has.compareTo(due) < 0))
                .orElse(false);
        if (required.isEmpty() || !(none || less)) {
            return Optional.empty();
        }
        List<String> because = new ArrayList<>();
        reached.ifPresent(has -> because.add(limit(has)));
        because.addAll(Drawing.of(level.required()).lines());
        because.addAll(Drawing.of(none ? level.levelBySum() : level.reached()).lines());
        if (none || weakest(reached.orElseThrow()).isEmpty()) {
            because.addAll(Drawing.of(level.pfh()).lines());
        }
        return Optional.of(Finding.refuses(
                        TOO_LOW,
                        tag,
                        function.tag().where(),
                        "`" + tag + "` reaches "
                                + (none ? "no performance level" : Workings.shown(level.reached()))
                                + ", and it needs " + Workings.shown(level.required()),
                        "build it of subsystems that fail less often, or take away by design what makes the hazard so"
                                + " grave; until then a named person may state a deviation with an interim measure")
                .because(because));
    }

    private String limit(Quantity reached) {
        String weakest = weakest(reached);
        return weakest.isEmpty()
                ? "the sum of the subsystems limits it: each of them by itself reaches more"
                : "limited by " + weakest + ", which by itself reaches no more than " + reached;
    }

    /** The subsystems that by themselves reach no more; empty where only the sum is so high. */
    private String weakest(Quantity reached) {
        return level.subsystems()
                .filter(one -> one.level().value().equals(Optional.of(reached)))
                .map(one -> "`" + one.tag() + "`")
                .distinct()
                .collect(Collectors.joining(" and "));
    }

    private List<Finding> categories() {
        return level.stages().stream()
                .flatMap(stage -> stage
                        .subsystem()
                        .flatMap(subsystem -> subsystem.subsystem().category().value())
                        .flatMap(category -> tooLow(stage, category))
                        .stream())
                .toList();
    }

    private Optional<Finding> tooLow(FunctionLevel.Stage stage, Category category) {
        List<LeastCategory> broken = level.due().standards().categories().stream()
                .filter(least -> !least.keptBy(category))
                .toList();
        return broken.isEmpty()
                ? Optional.empty()
                : Optional.of(Finding.refuses(
                                CATEGORY,
                                tag,
                                stage.element().subsystem().where(),
                                "`" + tag + "` is a safety function of a robot, and `"
                                        + stage.element().subsystem().characters() + "` in its chain has "
                                        + category + ", less than "
                                        + broken.get(0).category(),
                                "build this subsystem in two channels; until then a named person may state a deviation"
                                        + " with an interim measure")
                        .because(broken.stream()
                                .map(least -> least.reference().name() + ": " + Drawing.origin(least.reference()))
                                .toList()));
    }

    /** Of a function with a safeguard among its triggers the cause lies with that: no hazard names it. */
    private Optional<Finding> noLevel() {
        boolean asked = !level.due().risks().isEmpty()
                || !level.due().minimums().isEmpty()
                || !level.due().standards().toRead().isEmpty()
                || function.requires().isPresent();
        boolean byDevicesOnly = level.devices().size() == function.triggeredBy().size();
        return asked || !byDevicesOnly || function.triggeredBy().isEmpty()
                ? Optional.empty()
                : Optional.of(Finding.barsRelease(
                        NO_LEVEL,
                        tag,
                        function.tag().where(),
                        "nothing says which performance level `" + tag
                                + "` needs: no hazard names what triggers it, no edition"
                                + " in force sets a level for it, and none is stated",
                        "name its trigger under `by` of the hazard it serves, or state under `requires` which level is due, and"
                                + " why"));
    }

    private Optional<Finding> toRead() {
        return level.due().standards().toRead().stream()
                .filter(reference -> function.requires().isEmpty())
                .findFirst()
                .map(reference -> Finding.barsRelease(
                                TO_READ,
                                tag,
                                function.tag().where(),
                                "`" + tag + "` is a safety function of a robot, for which "
                                        + reference.clause().edition()
                                        + " sets a level of its own, and nobody stated which",
                                "read it in a copy, and state it under `requires` with the clause it was read in")
                        .because(List.of(reference.name() + ": " + Drawing.origin(reference))));
    }

    private Optional<Finding> requiresLess() {
        List<Term> others = Stream.<Term>concat(
                        level.due().risks().stream().map(risk -> risk.required()), level.due().minimums().stream())
                .toList();
        Optional<Quantity> due = others.isEmpty() ? Optional.empty() : new Greatest(others).value();
        return function.requires()
                .flatMap(requires -> requires.level()
                        .value()
                        .flatMap(stated -> due.filter(asked -> asked.compareTo(stated) > 0)
                                .map(asked -> Finding.warns(
                                                REQUIRES_LESS,
                                                tag,
                                                requires.level().where(),
                                                "`requires` of `" + tag + "` is " + stated
                                                        + ", and hazards or standards ask for " + asked + " anyway",
                                                "see whether another function was meant; if not, take it out")
                                        .because(Drawing.of(level.required()).lines()))));
    }
}
