package org.cellfile;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cellfile.compare.ReadSheet;
import org.cellfile.compare.State;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingText;
import org.cellfile.source.World;
import org.cellfile.verdict.Refused;

/** Holds what somebody read off the sheets at the machine against what is printed now. */
public final class PostedSheets {

    private PostedSheets() {}

    /** What came of it. */
    public sealed interface Outcome {}

    /** One answer for each sheet that was read. */
    public record Told(List<ReadSheet> sheets) implements Outcome {

        /** True when every one may go on hanging. */
        public boolean allCurrent() {
            return sheets.stream().allMatch(sheet -> sheet.standing() == ReadSheet.Standing.CURRENT);
        }

        /** The answers for people. */
        public String text() {
            StringBuilder text = new StringBuilder();
            sheets.forEach(sheet -> text.append(sheet.text()));
            return text.toString();
        }
    }

    /** Nothing is printed from the description, so that no sheet can be said to be current. */
    public record Unsaid(String source, List<Finding> findings) implements Outcome {

        /** Why, as a sentence without capital and full stop. */
        public String why() {
            return source + " leaves nothing to hold the sheets against (" + FindingText.count(findings) + ")";
        }
    }

    /**
     * Says of each sheet that was read how it stands to the description.
     *
     * @param read for each the text of its code, or its short digest
     * @param earlier a state it may have been printed from
     * @param day by which it is judged, from the one the description speaks of to today; empty for today
     */
    public static Outcome of(
            World world, List<String> read, Optional<Comparison.Source> earlier, Optional<LocalDate> day) {
        Generator.Checked checked = new Generator().undated(world);
        if (checked.cell().isEmpty() || checked.verdict() instanceof Refused) {
            return new Unsaid("the description", checked.verdict().findings());
        }
        List<Finding> notPossible = day.map(
                        asked -> JudgingDay.findings(checked.cell().get(), asked, world.today()))
                .orElseGet(List::of);
        if (!notPossible.isEmpty()) {
            return new Unsaid("the description", notPossible);
        }
        State now = state("the description", checked);
        Optional<State> was = Optional.empty();
        if (earlier.isPresent()) {
            Comparison.Source source = earlier.get();
            Generator.Checked before = new Generator().undated(source.world());
            if (before.cell().isEmpty()) {
                return new Unsaid(
                        "the state in " + source.words(), before.verdict().findings());
            }
            was = Optional.of(state(source.words(), before));
        }
        Optional<State> before = was;
        LocalDate judged = day.orElseGet(world::today);
        return new Told(
                read.stream().map(one -> ReadSheet.of(one, now, before, judged)).toList());
    }

    private static State state(String source, Generator.Checked checked) {
        return State.of(source, Generator.printed(checked.cell().orElseThrow()), Optional.empty());
    }
}
