package org.cellfile.compare;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.cellfile.cell.Substances;
import org.cellfile.dossier.Label;
import org.cellfile.subject.signoff.SignOff;

/** A comparison as text for people. */
public final class ComparisonText {

    /** More lines of one list than these are counted. */
    private static final int MOST = 15;

    /** Longer values are cut. */
    private static final int LONGEST = 48;

    private static final int WIDEST = 56;

    private static final int WIDTH = 100;

    /** Room for the words of a proof. */
    private static final int PROOF = 24;

    /** What stands behind the matrix of kinds of change. */
    static final List<String> SOURCE = List.of(
            "What a change voids is told by a matrix put together from published instructions of makers, none of which holds all of it.",
            "It takes the place neither of the risk assessment nor of whoever answers for the cell.");

    private final StringBuilder text = new StringBuilder();
    private final Compared compared;

    /** Tags of the derived values that stand above. */
    private final Set<String> told = new HashSet<>();

    private ComparisonText(Compared compared) {
        this.compared = compared;
    }

    public static String of(Compared compared) {
        return new ComparisonText(compared).text();
    }

    private String text() {
        Label label = compared.newer().label();
        line(0, label.cellName() + " (" + label.cellId() + ")");
        state("older", compared.older());
        state("newer", compared.newer());
        refused("older", compared.older());
        refused("newer", compared.newer());
        text.append('\n');
        line(0, summary(compared));
        compared.groups().forEach(this::group);
        list("Other derived values that differ", compared.otherValues(), ComparisonText::value);
        list("Copies of sheets to change at the cell", compared.sheets(), ComparisonText::sheet);
        list("Sign-offs that lapse", compared.lapsed(), ComparisonText::signOff);
        list(
                "Not explained by any change recorded since (`changes`, what each touches)",
                compared.unexplained(),
                Difference::words);
        decisions();
        if (!compared.same()) {
            text.append('\n');
            SOURCE.forEach(words -> line(0, words));
        }
        return text.toString();
    }

    private void state(String which, State state) {
        line(
                2,
                which + "  revision " + state.label().revision() + ", as of "
                        + state.label().asOf() + ", digest "
                        + state.substance().digest().substring(0, 12) + ", " + state.source());
    }

    private void refused(String which, State state) {
        state.refused()
                .ifPresent(count -> line(
                        2,
                        "the " + which + " state would be refused by this version (" + count
                                + "); it is compared all the same"));
    }

    /** What differs, counted. */
    public static String summary(Compared compared) {
        if (compared.same()) {
            return "nothing stated and nothing derived differs";
        }
        long machine = count(compared, true);
        long others = count(compared, false);
        long open = compared.open();
        long judged = compared.groups().stream()
                .filter(group -> group.kind().isEmpty())
                .mapToLong(group -> group.differences().size())
                .sum();
        return machine + (machine == 1 ? " difference" : " differences") + " of the machine, " + others
                + " of records and papers, " + compared.values().size() + " derived; "
                + (open == 0
                        ? "nothing of what the matrix asks is open"
                        : open + (open == 1 ? " thing" : " things") + " of what the matrix asks "
                                + (open == 1 ? "is" : "are") + " open")
                + (judged == 0
                        ? ""
                        : "; " + judged + (judged == 1 ? " difference is" : " differences are")
                                + " covered by no row of it and to be judged");
    }

    private static long count(Compared compared, boolean ofTheMachine) {
        return compared.groups().stream()
                .filter(group -> group.ofTheMachine() == ofTheMachine)
                .flatMap(group -> group.differences().stream())
                .distinct()
                .count();
    }

    private void group(Group group) {
        text.append('\n');
        line(0, group.title());
        int width = width(group.differences(), Difference::words);
        each(
                2,
                group.differences(),
                one -> padded(one.words(), width) + "  " + cut(one.before()) + " → " + cut(one.after()) + "  ("
                        + places(one) + ")"
                        + explained(one)
                        + (group.ofTheMachine() ? "" : "  " + paper(one)));
        if (group.consequences().isEmpty()) {
            derived(group.values().stream().map(Answers::value).toList());
            return;
        }
        for (Consequence consequence : group.consequences()) {
            line(4, padded(consequence.proof().words(), PROOF) + consequence.asks());
            if (consequence.items().isEmpty()) {
                line(6, "nothing recorded belongs to it");
            } else if (consequence.proof() == Proof.DISTANCE) {
                derived(consequence.items());
            } else {
                alike(consequence.items());
            }
        }
    }

    /** What was told before is counted. */
    private void derived(List<Consequence.Item> items) {
        List<Consequence.Item> fresh = items.stream()
                .filter(item -> item.about().isEmpty() || told.add(item.about()))
                .toList();
        int width = width(fresh, Consequence.Item::about);
        each(
                6,
                fresh,
                item -> item.about().isEmpty() ? item.words() : padded(item.about(), width) + "  " + item.words());
        int before = items.size() - fresh.size();
        if (before > 0) {
            line(6, before + (before == 1 ? " value" : " values") + " told above");
        }
    }

    /** Things of which the same is to be said stand together. */
    private void alike(List<Consequence.Item> items) {
        Map<String, List<String>> said = new LinkedHashMap<>();
        items.forEach(item ->
                said.computeIfAbsent(item.words(), any -> new ArrayList<>()).add(item.about()));
        said.forEach((words, about) -> {
            if (about.size() == 1) {
                line(6, (about.get(0) + "  " + words).strip());
                return;
            }
            StringBuilder list = new StringBuilder(words);
            String mark = ": ";
            for (String one : about) {
                if (!one.isEmpty()) {
                    if (list.length() - list.lastIndexOf("\n") + one.length() > WIDTH) {
                        list.append(mark.stripTrailing()).append("\n").append(" ".repeat(8));
                        mark = "";
                    }
                    list.append(mark).append(one);
                    mark = ", ";
                }
            }
            line(6, list.toString());
        });
    }

    private String explained(Difference difference) {
        List<String> by = compared.explanations().getOrDefault(difference, List.of());
        return by.isEmpty() ? "" : "  [" + String.join(", ", by) + "]";
    }

    /** The paper that a record or a name stands on. */
    private static String paper(Difference difference) {
        String key = difference.key();
        return key.equals("sheets")
                ? "posted sheets"
                : Substances.chapter(key).map(chapter -> "chapter " + chapter).orElse("no part of what is signed");
    }

    private static String places(Difference difference) {
        if (difference.added()) {
            return difference.afterAt();
        }
        return difference.removed() || difference.beforeAt().equals(difference.afterAt())
                ? difference.beforeAt()
                : difference.beforeAt() + " → " + difference.afterAt();
    }

    private static String value(ValueChange value) {
        return value.tag() + "  " + Answers.value(value).words();
    }

    private static String sheet(SheetChange sheet) {
        return sheet.id() + ", " + sheet.toBeDone() + ": " + String.join("; ", sheet.parts());
    }

    private static String signOff(LapsedSignOff one) {
        return one.words() + ", " + one.by() + ", " + one.on() + ", of "
                + (one.chapters().size() == 1 && one.chapters().get(0).equals(one.covers())
                        ? SignOff.covered(one.covers())
                        : SignOff.covered(one.covers()) + " (changed: " + String.join(", ", one.chapters()) + ")")
                + one.again().map(day -> "; signed again on " + day).orElse("; open");
    }

    private void decisions() {
        list(
                "Is it a substantial modification? Decided so far",
                compared.decisions(),
                decision -> decision.of().characters() + ": "
                        + decision.substantial().characters() + ", "
                        + compared.newer().cell().identity().nameOf(decision.by()) + ", "
                        + decision.on().characters());
    }

    private <T> void list(String title, List<T> items, Function<T, String> words) {
        if (!items.isEmpty()) {
            text.append('\n');
            line(0, title);
            each(2, items, words);
        }
    }

    private <T> void each(int indent, List<T> items, Function<T, String> words) {
        int shown = items.size() > MOST + 1 ? MOST : items.size();
        items.stream().limit(shown).forEach(item -> line(indent, words.apply(item)));
        if (shown < items.size()) {
            line(indent, "and " + (items.size() - shown) + " more (all of them with --json)");
        }
    }

    private static <T> int width(List<T> items, Function<T, String> column) {
        return items.stream()
                .map(column)
                .mapToInt(String::length)
                .filter(length -> length <= WIDEST)
                .max()
                .orElse(0);
    }

    private static String padded(String words, int width) {
        return words + " ".repeat(Math.max(0, width - words.length()));
    }

    /** Enough of a value to know it by. */
    static String cut(String value) {
        String plain = value.replaceAll("[\\p{Cc}\\p{Cf}]", "·");
        return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST) + "…";
    }

    private void line(int indent, String words) {
        text.append(" ".repeat(indent).concat(words).stripTrailing()).append('\n');
    }
}
