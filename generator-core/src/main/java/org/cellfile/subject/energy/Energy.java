package org.cellfile.subject.energy;

import java.util.List;
import java.util.Optional;
import org.cellfile.finding.FindingId;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Person;

/**
 * One energy of the cell.
 *
 * @param amount type and size, as in {@code 400 V}
 * @param at where it is isolated
 * @param isolate what is done there
 * @param lock what keeps it isolated, and where the lock goes
 * @param stored what is left of it after that; {@code nothing} where nothing is
 * @param release what is done to what is stored
 * @param verify how one sees that none is left
 * @param only people who alone may isolate it, among those who may use the procedure; none where all of them may
 */
public record Energy(
        Stated<String> tag,
        Stated<String> kind,
        Stated<String> name,
        Stated<String> amount,
        Stated<String> at,
        Stated<String> isolate,
        Stated<String> lock,
        Stated<String> stored,
        Stated<String> release,
        Stated<String> verify,
        List<Stated<String>> only) {

    public static final String SORT = "energy";

    /** Nobody says how one sees that it is gone. */
    static final FindingId NOT_VERIFIED = new FindingId("energy.not-verified");

    /** Something is stored, and nobody says how it is released. */
    static final FindingId NOT_RELEASED = new FindingId("energy.not-released");

    /** Only somebody may isolate it who may not use the procedure. */
    static final FindingId NOT_ALLOWED = new FindingId("energy.not-allowed");

    public static final String ELECTRICAL = "electrical";

    static final List<String> KINDS = List.of(
            ELECTRICAL, "pneumatic", "hydraulic", "gravity", "spring", "motion", "heat", "chemical", "radiation");

    private static final String NOTHING = "nothing";

    static Energy read(Section section) {
        return new Energy(
                section.tag(SORT),
                section.word("kind", KINDS),
                section.statement("name"),
                section.statement("amount"),
                section.statement("at"),
                section.statement("isolate"),
                section.statement("lock"),
                section.text("stored"),
                section.statementIfStated("release"),
                section.statementIfStated("verify"),
                section.referencesIfStated("only", Person.SORT));
    }

    /** True when something is left after it was isolated. */
    public boolean stores() {
        return stored.value().filter(what -> !what.equals(NOTHING)).isPresent();
    }

    /** How what is stored is released, where something is. */
    public Optional<Stated<String>> released() {
        return stores() && release.value().isPresent() ? Optional.of(release) : Optional.empty();
    }

    /** True when it is of that kind. */
    public boolean is(String which) {
        return kind.value().filter(which::equals).isPresent();
    }
}
