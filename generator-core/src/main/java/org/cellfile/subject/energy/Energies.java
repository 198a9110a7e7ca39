package org.cellfile.subject.energy;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cellfile.quantity.Interval;
import org.cellfile.read.Section;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.subject.due.Due;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.identity.Person;

/**
 * The energies of the cell and how they are isolated before somebody works in it.
 *
 * @param shutDown steps by which the cell is brought to rest before anything is isolated
 * @param may tags of the people who use the procedure
 * @param procedure the rules of the plant, where they are stated
 * @param inspections in the order written
 */
public record Energies(
        List<Stated<String>> shutDown,
        List<Stated<String>> may,
        List<Energy> sources,
        Optional<Procedure> procedure,
        List<Inspection> inspections,
        Span where) {

    /** Who asks for the yearly inspection. Published: OSHA eTool Lockout-Tagout, "Periodic inspections". */
    static final String INSPECTION_SOURCE = "29 CFR 1910.147(c)(6)(i)";

    /** At least annually; published there. */
    static final Interval YEARLY = new Interval(1, Interval.Step.YEAR);

    /** Empty where the description says nothing of them. */
    public static Optional<Energies> read(Section top) {
        return top.sectionIfStated("energies").map(section -> {
            Energies energies = new Energies(
                    section.texts("shut-down"),
                    section.references("may", Person.SORT),
                    Section.each(section.list("sources"), Energy::read),
                    section.sectionIfStated("procedure").map(Procedure::read),
                    Section.each(section.listIfStated("inspections"), Inspection::read),
                    section.where());
            section.close();
            return energies;
        });
    }

    /** The inspection made last. */
    public Optional<Inspection> latest() {
        return inspections.stream()
                .filter(one -> one.on().value().isPresent())
                .max(Comparator.comparing(one -> one.on().value().orElseThrow()));
    }

    /** How often the procedure is inspected: as stated; in the United States every year where nothing is. */
    Optional<Interval> inspected(Identity identity) {
        return procedure.flatMap(one ->
                one.every().value().or(() -> UnitedStates.holds(identity) ? Optional.of(YEARLY) : Optional.empty()));
    }

    /** By when it is inspected next; counted from the day from which it is used while nobody has inspected it. */
    public Optional<LocalDate> inspectedBy(Identity identity) {
        return inspected(identity)
                .flatMap(every -> lastDay().flatMap(Stated::value).map(every::after));
    }

    private Optional<Stated<LocalDate>> lastDay() {
        return latest().map(Inspection::on).or(() -> procedure.map(Procedure::since));
    }

    /** What of it falls due. */
    public List<Due> dues(Identity identity) {
        return inspectedBy(identity)
                .map(day -> new Due(
                        day,
                        identity.facts().id().characters(),
                        "inspect how energies are isolated",
                        UnitedStates.holds(identity)
                                ? INSPECTION_SOURCE + ", published"
                                : "the plant's procedure of isolating energies",
                        lastDay().map(Stated::where).orElse(where)))
                .stream()
                .toList();
    }

    /** Days that cannot lie ahead, with what happened then. */
    public Map<Stated<LocalDate>, String> dates() {
        Map<Stated<LocalDate>, String> dates = new LinkedHashMap<>();
        procedure.ifPresent(one -> dates.put(one.since(), "the first use of the procedure of isolating energies"));
        inspections.forEach(one -> dates.put(one.on(), "an inspection of how energies are isolated"));
        return dates;
    }
}
