package org.cellfile.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.cellfile.dossier.Statement;
import org.cellfile.dossier.Substance;
import org.cellfile.subject.register.Change;
import org.cellfile.subject.register.ModificationDecision;

/**
 * Two states of a cell held against each other.
 *
 * @param groups what was stated and differs, by kind; changes of the machine first, then what no row of the matrix covers, then records
 *     and papers
 * @param values every derived value that differs
 * @param recorded changes that only the newer state records
 * @param explanations for each difference that one of these explains, the tags of those
 * @param chapters of which the substance differs
 */
public record Compared(
        State older,
        State newer,
        List<Group> groups,
        List<ValueChange> values,
        List<Change> recorded,
        Map<Difference, List<String>> explanations,
        List<String> chapters,
        List<LapsedSignOff> lapsed,
        List<SheetChange> sheets) {

    /** Holds them against each other. */
    public static Compared of(State older, State newer) {
        List<Difference> differences = Difference.between(older.statements(), newer.statements());
        List<ValueChange> values = ValueChange.between(older, newer);
        List<SheetChange> sheets = SheetChange.between(older, newer);
        List<Change> recorded = recorded(older, newer);
        Answers answers = new Answers(older, newer, differences, recorded, sheets);
        List<Group> groups = new ArrayList<>();
        sorted(differences, older, newer)
                .forEach((kind, alike) -> groups.add(group(kind, alike, values, answers, older, newer)));
        return new Compared(
                older,
                newer,
                groups,
                values,
                recorded,
                explanations(differences, recorded, older, newer),
                LapsedSignOff.chapters(Substance.WHOLE, older.substance(), newer.substance()),
                LapsedSignOff.between(older, newer),
                sheets);
    }

    private static List<Change> recorded(State older, State newer) {
        Set<String> before = older.cell().registers().changes().stream()
                .map(change -> change.tag().characters())
                .collect(Collectors.toSet());
        return newer.cell().registers().changes().stream()
                .filter(change -> !before.contains(change.tag().characters()))
                .toList();
    }

    /** By kind, in the order in which they are told. A thing that only one state has is of every kind that something in it is of. */
    private static Map<Optional<KindOfChange>, List<Difference>> sorted(
            List<Difference> differences, State older, State newer) {
        Map<Difference, List<KindOfChange>> kinds = new LinkedHashMap<>();
        differences.forEach(difference -> kinds.put(difference, kinds(difference, older, newer)));
        Map<Optional<KindOfChange>, List<Difference>> sorted = new LinkedHashMap<>();
        KindsOfChange.all().stream()
                .filter(KindOfChange::ofTheMachine)
                .forEach(kind -> put(sorted, Optional.of(kind), kinds));
        put(sorted, Optional.empty(), kinds);
        KindsOfChange.all().stream()
                .filter(kind -> !kind.ofTheMachine())
                .forEach(kind -> put(sorted, Optional.of(kind), kinds));
        return sorted;
    }

    private static void put(
            Map<Optional<KindOfChange>, List<Difference>> sorted,
            Optional<KindOfChange> kind,
            Map<Difference, List<KindOfChange>> kinds) {
        List<Difference> alike = kinds.entrySet().stream()
                .filter(entry -> kind.map(entry.getValue()::contains)
                        .orElse(entry.getValue().isEmpty()))
                .map(Map.Entry::getKey)
                .toList();
        if (!alike.isEmpty()) {
            sorted.put(kind, alike);
        }
    }

    private static List<KindOfChange> kinds(Difference difference, State older, State newer) {
        List<KindOfChange> kinds = KindsOfChange.all().stream()
                .filter(kind -> difference.statements().stream()
                        .anyMatch(statement -> kind.covers(new Stating(statement.path(), older, newer))))
                .toList();
        List<KindOfChange> ofTheMachine =
                kinds.stream().filter(KindOfChange::ofTheMachine).toList();
        return ofTheMachine.isEmpty() ? kinds : ofTheMachine;
    }

    private static Group group(
            Optional<KindOfChange> kind,
            List<Difference> alike,
            List<ValueChange> values,
            Answers answers,
            State older,
            State newer) {
        Set<String> resting = new TreeSet<>(ValueChange.resting(newer, places(alike, Difference::newer, newer)));
        resting.addAll(ValueChange.resting(older, places(alike, Difference::older, older)));
        if (kind.filter(EditionChanged.class::isInstance).isPresent()) {
            resting.addAll(ValueChange.byOtherRules(older, newer));
        }
        List<ValueChange> changed = values.stream()
                .filter(value -> resting.contains(value.tag()) || alike.stream().anyMatch(one -> isOf(value, one)))
                .toList();
        long same = resting.stream()
                .filter(tag -> values.stream().noneMatch(value -> value.tag().equals(tag)))
                .count();
        Concerned concerned = Concerned.by(alike, newer.cell());
        Concerned before = Concerned.by(alike, older.cell());
        return new Group(
                kind,
                alike,
                changed,
                kind.map(one -> answers.to(one, concerned, before, changed, (int) same))
                        .orElse(List.of()));
    }

    /** True when a value belongs to a thing that only one state has. */
    private static boolean isOf(ValueChange value, Difference difference) {
        return (difference.added() || difference.removed())
                && difference.path().split("/", -1).length == 2
                && value.tag().startsWith(difference.label() + ".");
    }

    private interface Side {
        List<Statement> of(Difference difference);
    }

    private static Set<String> places(List<Difference> differences, Side side, State state) {
        return differences.stream()
                .flatMap(difference -> side.of(difference).stream())
                .flatMap(statement -> ValueChange.places(statement, state).stream())
                .collect(Collectors.toSet());
    }

    private static Map<Difference, List<String>> explanations(
            List<Difference> differences, List<Change> recorded, State older, State newer) {
        Map<Difference, List<String>> explanations = new LinkedHashMap<>();
        for (Difference difference : differences) {
            Set<String> things = new LinkedHashSet<>(Concerned.named(difference, newer.cell()));
            things.addAll(Concerned.named(difference, older.cell()));
            List<String> by = recorded.stream()
                    .filter(change -> things.stream().anyMatch(change::touches))
                    .map(change -> change.tag().characters())
                    .toList();
            if (!by.isEmpty()) {
                explanations.put(difference, by);
            }
        }
        return explanations;
    }

    /** True when nothing stated and nothing derived differs. */
    public boolean same() {
        return groups.isEmpty() && values.isEmpty();
    }

    /** Changes of the machine, and what may be one, that no recorded change explains. */
    public List<Difference> unexplained() {
        return groups.stream()
                .filter(Group::ofTheMachine)
                .flatMap(group -> group.differences().stream())
                .filter(difference -> !explanations.containsKey(difference))
                .distinct()
                .toList();
    }

    /** Derived values that differ and rest on nothing that stands in a group. */
    public List<ValueChange> otherValues() {
        Set<ValueChange> told =
                groups.stream().flatMap(group -> group.values().stream()).collect(Collectors.toSet());
        return values.stream().filter(value -> !told.contains(value)).toList();
    }

    /** How many things are asked and were not done; what several changes ask of one thing counts once. */
    public long open() {
        return groups.stream()
                .flatMap(group -> group.consequences().stream())
                .flatMap(consequence -> consequence.items().stream()
                        .filter(Consequence.Item::open)
                        .map(item -> consequence.proof().words() + " " + item.about()))
                .distinct()
                .count();
    }

    /** Decisions of the newer state on the changes it records. */
    public List<ModificationDecision> decisions() {
        Set<String> tags =
                recorded.stream().map(change -> change.tag().characters()).collect(Collectors.toSet());
        return newer.cell().registers().decisions().stream()
                .filter(decision -> tags.contains(decision.of().characters()))
                .toList();
    }
}
