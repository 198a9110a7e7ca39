package org.cellfile.subject.complement;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.finding.FindingId;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.CellFacts;

/**
 * A mode selector.
 *
 * @param lockedBy what keeps others from changing the mode
 * @param modes tags of those that can be selected
 */
public record ModeSelector(Stated<String> lockedBy, List<Stated<String>> modes) implements Sort {

    /** Anybody can change the mode. */
    public static final FindingId NOT_LOCKABLE = new FindingId("installed.mode-selector-not-lockable");

    private static final Set<String> LOCKS = Set.of("key", "code", "transponder");

    static ModeSelector read(Section section) {
        return new ModeSelector(
                section.word("locked-by", Set.of("key", "code", "transponder", "nothing")),
                section.references("modes", CellFacts.MODE));
    }

    @Override
    public String id() {
        return "mode-selector";
    }

    @Override
    public String words() {
        return "Mode selector";
    }

    @Override
    public List<Fact> facts() {
        return List.of(
                new Fact("locked by", lockedBy.characters()),
                new Fact("modes", modes.stream().map(Stated::characters).collect(Collectors.joining(", "))));
    }

    @Override
    public Demands demands(String tag, Surroundings around) {
        Demands demands = new Demands(tag);
        around.robots()
                .ifPresent(standard -> demands.rule(
                        standard.lockableModes(),
                        lockedBy,
                        LOCKS,
                        NOT_LOCKABLE,
                        "lets anybody change the mode",
                        "fit a selector that is locked by a key, a code or a transponder, and list who holds them"));
        return demands;
    }
}
