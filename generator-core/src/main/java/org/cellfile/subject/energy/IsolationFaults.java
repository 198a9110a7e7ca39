package org.cellfile.subject.energy;

import java.util.List;
import java.util.Optional;
import org.cellfile.dossier.Text;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Identity;

/** What does not hold of how the energies are isolated. */
public final class IsolationFaults {

    /** Nothing is said of the energies. */
    public static final FindingId MISSING = new FindingId("energy.missing");

    /** The procedure of a cell in the United States lacks something it must hold. */
    static final FindingId ITEM = new FindingId("energy.procedure-incomplete");

    /** It is inspected more seldom than every year. */
    static final FindingId TOO_SELDOM = new FindingId("energy.inspected-too-seldom");

    /** Who inspects it uses it. */
    static final FindingId OWN_INSPECTION = new FindingId("energy.inspected-by-user");

    /** The last inspection left somebody out who uses it. */
    static final FindingId LEFT_OUT = new FindingId("energy.left-out-of-inspection");

    private final Energies energies;
    private final Identity identity;
    private final Findings findings = new Findings();

    private IsolationFaults(Energies energies, Identity identity) {
        this.energies = energies;
        this.identity = identity;
    }

    public static List<Finding> of(Optional<Energies> energies, Identity identity) {
        return energies.map(stated -> new IsolationFaults(stated, identity).all())
                .orElseGet(() -> List.of(Finding.barsRelease(
                        MISSING,
                        "",
                        identity.where(),
                        "nothing tells which energies this cell has and how they are isolated before somebody works in it",
                        "state under `energies` each energy with how it is isolated, locked, released and verified; until then"
                                + " the sheet for maintenance is not printed")));
    }

    private List<Finding> all() {
        energies.sources().forEach(this::source);
        if (UnitedStates.holds(identity)) {
            procedure();
        }
        energies.inspections().forEach(this::inspector);
        energies.latest().filter(last -> UnitedStates.holds(identity)).ifPresent(this::included);
        return findings.sorted();
    }

    private void source(Energy energy) {
        String tag = energy.tag().characters();
        if (energy.verify().value().isEmpty()) {
            findings.add(Finding.refuses(
                    Energy.NOT_VERIFIED,
                    tag,
                    energy.tag().where(),
                    "nothing tells how one sees that nothing is left of the energy `" + tag + "`",
                    "state under `verify` what is tried, measured or looked at, and where, after it was isolated and released;"
                            + " that the switch is off is no proof"));
        }
        if (energy.stores() && energy.release().value().isEmpty()) {
            findings.add(Finding.refuses(
                    Energy.NOT_RELEASED,
                    tag,
                    energy.stored().where(),
                    "`" + tag + "` stores something after it was isolated ("
                            + energy.stored().characters() + "), and nothing tells how that is released",
                    "state under `release` what is discharged, vented, lowered or blocked, and how long it takes"));
        }
        energy.only().stream()
                .filter(person -> !mayUse(person))
                .forEach(person -> findings.add(Finding.refuses(
                        Energy.NOT_ALLOWED,
                        tag,
                        person.where(),
                        "only `" + person.characters() + "` may isolate `" + tag
                                + "`, and is not among those who may isolate" + " energies of this cell",
                        "name the person under `may` too, if that is so, or name another one here")));
    }

    private boolean mayUse(Stated<String> person) {
        return energies.may().stream().anyMatch(one -> one.value().equals(person.value()));
    }

    /** Each item by itself, so that none is overlooked. */
    private void procedure() {
        List<Procedure.Item> missing =
                energies.procedure().map(Procedure::missing).orElseGet(() -> List.of(Procedure.Item.values()));
        missing.forEach(item -> findings.add(Finding.refuses(
                ITEM,
                "",
                energies.procedure().map(Procedure::where).orElse(energies.where()),
                "the procedure of isolating energies does not tell " + item.asks() + " (`" + item.key() + "`), which "
                        + item.source() + " asks for",
                "state it under `procedure` as it is in the plant; a cell is held to this because an edition of ANSI or a part"
                        + " of 29 CFR is in force for it")));
        energies.procedure()
                .flatMap(one -> one.every().value())
                .filter(every -> every.longerThan(Energies.YEARLY))
                .ifPresent(every -> findings.add(Finding.refuses(
                        TOO_SELDOM,
                        "",
                        energies.procedure().orElseThrow().every().where(),
                        "the procedure of isolating energies is inspected every " + every + "; "
                                + Energies.INSPECTION_SOURCE + " asks for " + Energies.YEARLY + " at the longest",
                        "inspect it once a year or more often")));
    }

    private void inspector(Inspection inspection) {
        if (mayUse(inspection.by()) && inspection.by().value().isPresent()) {
            findings.add(
                    Finding.refuses(
                            OWN_INSPECTION,
                            "",
                            inspection.by().where(),
                            "`" + inspection.by().characters() + "` inspected on "
                                    + inspection.on().characters()
                                    + " how energies are isolated, and isolates them too; an inspection is made by somebody who does"
                                    + " not use what is inspected (" + Energies.INSPECTION_SOURCE + "(A))",
                            "have it inspected by somebody who may isolate energies elsewhere and does not do it at this cell"));
        }
    }

    private void included(Inspection last) {
        List<String> without = energies.may().stream()
                .filter(person -> person.value().isPresent() && !last.includes(person))
                .map(Stated::characters)
                .toList();
        if (!without.isEmpty()) {
            findings.add(
                    Finding.barsRelease(
                            LEFT_OUT,
                            "",
                            last.on().where(),
                            "the inspection of " + last.on().characters() + " left out " + Text.tagged(without)
                                    + ", who may isolate energies of this cell; each of them has to be included ("
                                    + Energies.INSPECTION_SOURCE + "(C))",
                            "have the inspector go through the duties with each of them, and state it as an inspection of that day"));
        }
    }
}
