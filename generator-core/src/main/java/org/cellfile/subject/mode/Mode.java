package org.cellfile.subject.mode;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.identity.CellFacts;
import org.cellfile.subject.safeguard.Safeguard;

/**
 * A mode of the cell as it was stated.
 *
 * @param sort what sort of mode the standards would call it
 * @param speedLimit of the tool centre point in this mode
 * @param persons how many may be inside, a count that may be zero
 * @param who may be inside; missing where nobody may
 * @param enablingDevices tags of those held by the persons inside, one each
 * @param remoteStart whether a start from outside the cell's own controls is possible
 * @param emergencyStops tags of those that act
 * @param active tags of safeguards that act
 * @param suspended those that do not, each with what takes its place
 * @param notApplicable those that mean nothing in this mode, each with the reason
 * @param others state of the safeguards that are not named; fixed guards stand in every mode
 * @param compensation what takes the place of the suspended safeguards that are not named
 * @param claims what a collaborative mode rests on
 */
public record Mode(
        Stated<String> tag,
        Stated<String> sort,
        Stated<String> name,
        Stated<Quantity> speedLimit,
        Stated<Quantity> persons,
        Stated<String> who,
        List<Stated<String>> enablingDevices,
        Stated<String> holdToRun,
        Stated<String> remoteStart,
        List<Stated<String>> emergencyStops,
        List<Stated<String>> active,
        List<Except> suspended,
        List<Except> notApplicable,
        Stated<String> others,
        Stated<String> compensation,
        List<CollaborativeClaim> claims) {

    public static final String SORT = CellFacts.MODE;

    /** What was measured and its limit are of different sorts. */
    public static final FindingId NOT_COMPARABLE = new FindingId("mode.claim-not-comparable");

    /** Nobody inside, the safeguards act. */
    public static final String AUTOMATIC = "automatic";

    /** The holder of the pendant moves the robot slowly. */
    public static final String MANUAL_REDUCED_SPEED = "manual-reduced-speed";

    /** The robot is moved from the pendant at programmed speed. */
    public static final String MANUAL_HIGH_SPEED = "manual-high-speed";

    /** People and robot share the space by design. */
    public static final String COLLABORATIVE = "collaborative";

    private static final Set<String> SORTS =
            Set.of(AUTOMATIC, MANUAL_REDUCED_SPEED, MANUAL_HIGH_SPEED, COLLABORATIVE, "other");

    /** A safeguard that is not in its usual state, with the reason or with what takes its place. */
    public record Except(Stated<String> safeguard, Stated<String> words) {}

    /**
     * Something measured at a collaborative cell and the limit it is held against.
     *
     * @param atMost whether the limit is a highest value; else it is a least one
     * @param source of the limit
     */
    public record CollaborativeClaim(
            Stated<String> name,
            Stated<Quantity> measured,
            Stated<Quantity> limit,
            boolean atMost,
            Stated<String> source) {
        static CollaborativeClaim read(Section section) {
            boolean atMost = section.has("at-most");
            CollaborativeClaim claim = new CollaborativeClaim(
                    section.text("name"),
                    section.anyQuantity("measured"),
                    section.anyQuantity(atMost ? "at-most" : "at-least"),
                    atMost,
                    section.statement("source"));
            if (!claim.comparable()) {
                section.report(Finding.refuses(
                        NOT_COMPARABLE,
                        "",
                        claim.measured.where(),
                        "`" + claim.name.characters() + "` was measured as " + claim.measured.characters()
                                + " and is limited to " + claim.limit.characters()
                                + ", which cannot be compared",
                        "write the measured value and its limit with units of one sort"));
            }
            return claim;
        }

        /** False when the measured value and its limit are known and of different sorts. */
        boolean comparable() {
            return measured.value()
                    .flatMap(one -> limit.value().map(other -> one.dimension().equals(other.dimension())))
                    .orElse(true);
        }
    }

    /** What becomes of a safeguard in a mode. */
    public enum State {
        ACTIVE("active"),
        SUSPENDED("suspended"),
        NOT_APPLICABLE("not applicable"),
        /** Nobody said, or two things were said. */
        UNSTATED("not stated");

        private final String words;

        State(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public static Mode read(Section section) {
        Stated<String> tag = section.tag(SORT);
        Section inside = section.section("inside");
        Section safeguards = section.section("safeguards");
        Mode mode = new Mode(
                tag,
                section.word("sort", SORTS),
                section.text("name"),
                section.positive("speed-limit", Dimension.SPEED),
                inside.countOrNone("persons"),
                inside.statementIfStated("who"),
                inside.referencesIfStated("enabling-devices", ComplementaryDevice.SORT),
                section.word("hold-to-run", Set.of("yes", "no")),
                section.word("remote-start", Set.of("possible", "locked-out")),
                section.referencesIfStated("emergency-stops", ComplementaryDevice.SORT),
                safeguards.referencesIfStated("active", Safeguard.SORT),
                excepts(safeguards.listIfStated("suspended"), "compensation"),
                excepts(safeguards.listIfStated("not-applicable"), "because"),
                safeguards.wordIfStated("others", Set.of("active", "suspended")),
                safeguards.statementIfStated("compensation"),
                Section.each(section.listIfStated("collaborative-claims"), CollaborativeClaim::read));
        inside.close();
        safeguards.close();
        return mode;
    }

    private static List<Except> excepts(List<Section> sections, String why) {
        return Section.each(
                sections,
                section -> new Except(section.reference("safeguard", Safeguard.SORT), section.statementIfStated(why)));
    }

    /** True for a mode of that sort. */
    public boolean is(String what) {
        return sort.value().filter(what::equals).isPresent();
    }

    /** True when the robot is moved by hand from the pendant. */
    public boolean manual() {
        return is(MANUAL_REDUCED_SPEED) || is(MANUAL_HIGH_SPEED);
    }

    /** How many may be inside; none where it could not be read, which was then reported. */
    public int inside() {
        return persons.value().map(count -> count.number().intValueExact()).orElse(0);
    }

    /** What becomes of a safeguard. A fixed guard stands in every mode unless it is named. */
    public State state(Safeguard safeguard) {
        String wanted = safeguard.tag().characters();
        if (named().filter(one -> one.characters().equals(wanted)).count() > 1) {
            return State.UNSTATED;
        }
        if (active.stream().anyMatch(one -> one.characters().equals(wanted))) {
            return State.ACTIVE;
        }
        if (named(suspended, wanted).isPresent()) {
            return State.SUSPENDED;
        }
        if (named(notApplicable, wanted).isPresent()) {
            return State.NOT_APPLICABLE;
        }
        if (!safeguard.kind().stopsTheHazard()) {
            return State.ACTIVE;
        }
        return others.value()
                .map(word -> word.equals("active") ? State.ACTIVE : State.SUSPENDED)
                .orElse(State.UNSTATED);
    }

    /** Every safeguard that is named, in the order of the states. */
    Stream<Stated<String>> named() {
        return Stream.concat(
                active.stream(),
                Stream.concat(suspended.stream(), notApplicable.stream()).map(Except::safeguard));
    }

    /** What takes the place of a suspended safeguard; missing when nothing was named. */
    public Stated<String> compensation(Safeguard safeguard) {
        return ownCompensation(safeguard).orElse(compensation);
    }

    /** What was named for just that safeguard. */
    Optional<Stated<String>> ownCompensation(Safeguard safeguard) {
        return named(suspended, safeguard.tag().characters())
                .map(Except::words)
                .filter(words -> words.value().isPresent());
    }

    /** Why a safeguard means nothing in this mode; missing when nobody said so. */
    Optional<Stated<String>> notApplicableBecause(Safeguard safeguard) {
        return named(notApplicable, safeguard.tag().characters()).map(Except::words);
    }

    /** Where a safeguard is put into its state: where it is named, or where all others are meant. */
    public Stated<String> place(Safeguard safeguard) {
        String wanted = safeguard.tag().characters();
        return named(suspended, wanted)
                .or(() -> named(notApplicable, wanted))
                .map(Except::safeguard)
                .orElse(others);
    }

    private static Optional<Except> named(Collection<Except> excepts, String safeguard) {
        return excepts.stream()
                .filter(one -> one.safeguard().characters().equals(safeguard))
                .findFirst();
    }

    /** True when that emergency stop acts. */
    public boolean stopsBy(ComplementaryDevice emergencyStop) {
        return emergencyStops.stream()
                .anyMatch(one -> one.value().equals(emergencyStop.tag().value()));
    }
}
