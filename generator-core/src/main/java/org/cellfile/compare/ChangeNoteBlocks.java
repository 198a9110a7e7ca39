package org.cellfile.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.cellfile.compare.Consequence.Item;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Entry;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Block.Facts;
import org.cellfile.dossier.Block.Line;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Points;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Block.WriteInLines;
import org.cellfile.dossier.Block.WriteInTable;
import org.cellfile.dossier.Form;
import org.cellfile.subject.register.Change;
import org.cellfile.subject.register.ModificationDecision;
import org.cellfile.subject.register.RegisterChapters;
import org.cellfile.subject.signoff.SignOff;

/** A comparison as a note of one or two pages, with the record of a decision. */
public final class ChangeNoteBlocks {

    /** With this the title of every change note begins. */
    public static final String TITLE = "Change note";

    /** Longer words are cut: the text output and the description have them. */
    private static final int LONGEST = 44;

    private final Compared compared;
    private final int most;

    private ChangeNoteBlocks(Compared compared, int most) {
        this.compared = compared;
        this.most = most;
    }

    /**
     * The note.
     *
     * @param most how many lines of each list stand on it; the others are counted
     */
    public static Form of(Compared compared, int most) {
        return new Form("change-note", TITLE, false, new ChangeNoteBlocks(compared, most).blocks());
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Facts(List.of(state("From", compared.older()), state("To", compared.newer()))));
        blocks.add(new Paragraph(ComparisonText.summary(compared) + "."));
        changes(blocks);
        voided(blocks);
        blocks.add(new Section("", "Sheets, sign-offs, records", List.of(new Points(paper()))));
        blocks.add(new Section("", "Is it a substantial modification?", decisions()));
        return blocks;
    }

    private static Fact state(String which, State state) {
        return new Fact(
                which,
                "revision " + state.label().revision() + ", as of "
                        + state.label().asOf() + ", digest "
                        + state.substance().digest().substring(0, 16),
                cut(state.source(), 2 * LONGEST)
                        + state.refused()
                                .map(count -> "; would be refused by this version (" + count + ")")
                                .orElse(""));
    }

    private void changes(List<Block> blocks) {
        Map<Difference, Set<String>> kinds = new LinkedHashMap<>();
        compared.groups().stream()
                .filter(Group::ofTheMachine)
                .forEach(group -> group.differences()
                        .forEach(difference -> kinds.computeIfAbsent(difference, any -> new LinkedHashSet<>())
                                .add(group.kind().isPresent() ? group.title() : "to be judged")));
        if (kinds.isEmpty()) {
            return;
        }
        List<List<String>> rows = kinds.entrySet().stream()
                .limit(most)
                .map(entry -> List.of(
                        entry.getKey().words(),
                        cut(entry.getKey().before(), LONGEST),
                        cut(entry.getKey().after(), LONGEST),
                        entry.getValue().iterator().next()
                                + (entry.getValue().size() > 1
                                        ? " and " + (entry.getValue().size() - 1) + " more"
                                        : ""),
                        recorded(entry.getKey())))
                .toList();
        blocks.add(new Table(
                "What was changed at the cell"
                        + (rows.size() < kinds.size()
                                ? ": the first " + rows.size() + " of " + kinds.size()
                                        + ", the others are told by the text output"
                                : ""),
                List.of(
                        Column.text("Where", 8),
                        Column.text("Was", 4),
                        Column.text("Is", 4),
                        Column.text("Kind of change", 5),
                        Column.text("Recorded as", 4)),
                rows));
    }

    private String recorded(Difference difference) {
        List<String> by = compared.explanations().getOrDefault(difference, List.of());
        return by.isEmpty() ? "not recorded" : String.join(", ", by);
    }

    /** One row for each proof, whatever kinds of change ask for it. */
    private void voided(List<Block> blocks) {
        List<List<String>> rows = new ArrayList<>();
        for (Proof proof : Proof.values()) {
            Map<String, Item> items = new LinkedHashMap<>();
            Set<String> asks = new LinkedHashSet<>();
            for (Group group : compared.groups()) {
                group.consequences().stream()
                        .filter(one -> one.proof() == proof)
                        .forEach(one -> {
                            asks.add(one.asks());
                            one.items().stream()
                                    .filter(item -> proof != Proof.DISTANCE
                                            || !item.about().isEmpty())
                                    .forEach(item ->
                                            items.merge(item.about(), item, (was, is) -> was.open() ? was : is));
                        });
            }
            if (!asks.isEmpty()) {
                rows.add(List.of(
                        proof.words(),
                        String.join("; ", asks),
                        listed(items, item -> !item.open()),
                        listed(items, Item::open)));
            }
        }
        if (!rows.isEmpty()) {
            blocks.add(new Paragraph(String.join(" ", ComparisonText.SOURCE)));
            blocks.add(new Table(
                    "What that voids by the matrix of kinds of change; what was done again and what is open",
                    List.of(
                            Column.text("Proof", 3),
                            Column.text("Asked", 3),
                            Column.text("Done again, or recomputed", 8),
                            Column.text("Open", 7)),
                    rows));
        }
    }

    /** A line for each thing to be said, before it the things of which it is said. */
    private String listed(Map<String, Item> items, Predicate<Item> which) {
        List<Item> chosen = items.values().stream().filter(which).toList();
        if (chosen.isEmpty()) {
            return "–";
        }
        Map<String, List<String>> said = new LinkedHashMap<>();
        chosen.stream()
                .limit(most)
                .forEach(item -> said.computeIfAbsent(item.words(), any -> new ArrayList<>())
                        .add(item.about()));
        List<String> lines = new ArrayList<>();
        said.forEach((words, about) -> {
            // the head of the column says that it is open
            String alone = words.startsWith(Answers.OPEN) ? words.substring(Answers.OPEN.length()) : words;
            lines.add((String.join(", ", about) + (about.size() > 1 ? ": " : " ") + alone).strip());
        });
        if (chosen.size() > most) {
            lines.add((chosen.size() - most) + " more");
        }
        return String.join("\n", lines).replace("`", "");
    }

    private List<String> paper() {
        List<String> points = new ArrayList<>();
        points.add(
                compared.sheets().isEmpty()
                        ? "Every posted sheet says the same."
                        : limited(
                                "Copies of sheets to change: ",
                                compared.sheets(),
                                sheet -> sheet.id() + ", " + sheet.toBeDone() + " (" + String.join("; ", sheet.parts())
                                        + ")"));
        points.add(
                compared.lapsed().isEmpty()
                        ? "No sign-off lapses: none held in the older state, or what they cover is the same."
                        : limited(
                                "Sign-offs that lapse: ",
                                compared.lapsed(),
                                one -> "“" + one.words() + "” of " + SignOff.covered(one.covers()) + " by "
                                        + one.by() + " on " + one.on()
                                        + one.again()
                                                .map(day -> " (signed again on " + day + ")")
                                                .orElse(" (open)")));
        points.add(limited("Chapters of which the substance differs: ", compared.chapters(), Function.identity()));
        if (!compared.unexplained().isEmpty()) {
            points.add(limited("Not explained by any change recorded: ", compared.unexplained(), Difference::words));
        }
        return points;
    }

    private <T> String limited(String before, List<T> items, Function<T, String> words) {
        String listed = items.stream().limit(most).map(words).collect(Collectors.joining(", "));
        return before + (listed.isEmpty() ? "none" : listed)
                + (items.size() > most ? " and " + (items.size() - most) + " more" : "") + ".";
    }

    private List<Block> decisions() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(
                "The decision lies with the one in whose name the change is made; the law of the place governs."
                        + " This program holds a recorded conclusion against its answers and decides nothing. "
                        + ModificationDecision.SOURCES));
        List<ModificationDecision> decided = compared.decisions();
        decided.stream()
                .limit(1)
                .forEach(one -> blocks.addAll(
                        RegisterChapters.decision(one, compared.newer().cell().identity())));
        if (decided.size() > 1) {
            blocks.add(new Paragraph(limited(
                    "Decided as well, see the registers: ",
                    decided.subList(1, decided.size()),
                    one -> one.of().characters() + " (substantial: "
                            + one.substantial().characters() + ")")));
        }
        List<String> open = compared.recorded().stream()
                .map((Change change) -> change.tag().characters())
                .filter(tag ->
                        decided.stream().noneMatch(one -> one.of().characters().equals(tag)))
                .toList();
        if (decided.isEmpty() || !open.isEmpty()) {
            blocks.add(questions(open));
            blocks.add(new WriteInLines(List.of(
                    new Line("Substantial?", Entry.tick("yes", "no")),
                    new Line("Because", Entry.room()),
                    new Line("Decided by", Entry.room()),
                    new Line("Date, signature", Entry.room()))));
        }
        return blocks;
    }

    private Block questions(List<String> changes) {
        List<List<Entry>> rows = new ArrayList<>();
        for (String question : ModificationDecision.questions()) {
            rows.add(List.of(Entry.printed((rows.size() + 1) + ". " + question), Entry.tick("yes", "no")));
        }
        return new WriteInTable(
                changes.isEmpty()
                        ? "No decision is recorded"
                        : limited("No decision is recorded on ", changes, Function.identity()),
                List.of(Column.text("Question", 6), Column.text("Answer", 2)),
                rows);
    }

    private static String cut(String value, int longest) {
        String plain = value.replaceAll("[\\p{Cc}\\p{Cf}]", "·");
        return plain.length() <= longest ? plain : plain.substring(0, longest) + "…";
    }
}
