package org.cellfile.subject.identity;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Nearest;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.standard.Edition;
import org.cellfile.standard.Editions;
import org.cellfile.standard.Standards.Named;

/**
 * An edition the cell names, and what it was applied to.
 *
 * @param use {@code in-force}, which is meant where nothing is stated, or {@code comparison}
 * @param unclear true when {@code use} could not be read
 * @param onlyFor tags of the safeguards it is in force for; none for all
 * @param pinnedBy what demands just this edition, for example a law that names it; missing where nothing does
 */
public record ChosenEdition(
        Stated<String> edition,
        Stated<String> appliedTo,
        Stated<String> use,
        boolean unclear,
        List<Stated<String>> onlyFor,
        Stated<String> pinnedBy) {

    /** An edition this program does not know. */
    public static final FindingId UNKNOWN = new FindingId("standard.unknown-edition");

    /** An edition is named for comparison and for some safeguards. */
    public static final FindingId ONLY_COMPARED = new FindingId("standard.only-compared");

    private static final String IN_FORCE = "in-force";
    private static final String COMPARISON = "comparison";

    /** The sort of tags an edition can be in force for; safeguards are read after the identity of the cell. */
    private static final String SAFEGUARD = "safeguard";

    static ChosenEdition read(Section section) {
        Stated<String> edition = section.text("edition");
        if (edition.value().isPresent() && Editions.of(edition.characters()).isEmpty()) {
            section.report(Finding.refuses(
                    UNKNOWN,
                    "",
                    edition.where(),
                    "`" + edition.characters() + "` is not an edition whose rules are known here",
                    "known: " + Nearest.listed(edition.characters(), Editions.ids())));
        }
        Stated<String> use = section.wordIfStated("use", Set.of(IN_FORCE, COMPARISON));
        List<Stated<String>> onlyFor = section.referencesIfStated("only-for", SAFEGUARD);
        boolean compared = use.value().filter(COMPARISON::equals).isPresent();
        if (compared && !onlyFor.isEmpty()) {
            section.report(Finding.refuses(
                    ONLY_COMPARED,
                    "",
                    onlyFor.get(0).where(),
                    "`" + edition.characters()
                            + "` is named for comparison only, and cannot be in force for some safeguards",
                    "leave out `only-for`, or `use: comparison`"));
        }
        return new ChosenEdition(
                edition,
                section.text("applied-to"),
                use,
                // A word that means nothing was reported; what it was to mean is not guessed.
                section.has("use") && use.value().isEmpty(),
                onlyFor,
                section.textIfStated("pinned-by"));
    }

    /** False when it is named for comparison only. */
    public boolean inForce() {
        return use.value().filter(COMPARISON::equals).isEmpty();
    }

    /**
     * As rules; empty when its rules are not known.
     *
     * @param reading puts what was read in copies into the rules
     */
    Optional<Named> named(UnaryOperator<Edition> reading) {
        return Editions.of(edition.characters())
                .filter(known -> !unclear)
                .map(reading)
                .map(known -> new Named(
                        known,
                        inForce(),
                        onlyFor.stream().map(Stated::characters).toList()));
    }
}
