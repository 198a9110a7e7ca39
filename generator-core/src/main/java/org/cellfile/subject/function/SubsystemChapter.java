package org.cellfile.subject.function;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Block.Facts;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;
import org.cellfile.standard.ControlStandard;
import org.cellfile.trace.Lookup;
import org.cellfile.trace.Term;

/** How subsystems and parts are printed. */
public final class SubsystemChapter {

    private static final String NONE = "–";

    private SubsystemChapter() {}

    public static Chapter chapter(ControlSystem system, ControlStandard standard, Workings workings) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(
                "Each subsystem with its figures: as its maker tells them, or recomputed by " + standard.id()
                        + " from the parts it is built of. Times are rounded down, frequencies up; calculation goes on with the"
                        + " unrounded values. A year of operation has 8760 h. 1, 2 … at the symbols of a formula number the parts in the order in which they are"
                        + " listed for the subsystem; C1 and C2 are its channels."));
        List<SubsystemLevel> bought = system.subsystems().stream()
                .filter(level -> level.subsystem().maker().isPresent())
                .toList();
        if (!bought.isEmpty()) {
            blocks.add(bought(bought, system));
        }
        bought.stream()
                .filter(level -> !level.recorded().values().isEmpty())
                .forEach(level ->
                        blocks.add(workings.rows("Recorded for " + level.tag(), level.derived(), level.recorded())));
        system.subsystems().stream()
                .filter(level -> level.subsystem().maker().isEmpty())
                .forEach(level -> blocks.add(built(level, system, standard, workings)));
        if (!system.parts().isEmpty()) {
            blocks.add(parts(system.parts(), workings));
        }
        return new Chapter("subsystems", "Subsystems and parts", blocks);
    }

    private static Table bought(List<SubsystemLevel> bought, ControlSystem system) {
        return new Table(
                "Subsystems with the figures of their makers",
                List.of(
                        Column.text("Subsystem", 14),
                        Column.text("Category, PL", 2),
                        Column.figures("PFH_D", 3),
                        Column.text("Source", 7),
                        Column.text("Used", 6),
                        Column.text("Replace by", 3)),
                bought.stream()
                        .map(level -> bought(level, level.subsystem().maker().orElseThrow(), system))
                        .toList());
    }

    private static List<String> bought(SubsystemLevel level, Subsystem.Maker maker, ControlSystem system) {
        return List.of(
                level.tag() + "\n" + level.subsystem().name().characters(),
                level.subsystem().category().characters() + ", " + maker.level().characters(),
                maker.pfh().characters(),
                maker.source().characters(),
                Uses.of(level, system.functions()).inWords(),
                level.replaceBy().map(LocalDate::toString).orElse(NONE));
    }

    private static Section built(
            SubsystemLevel level, ControlSystem system, ControlStandard standard, Workings workings) {
        Subsystem subsystem = level.subsystem();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(
                "Category",
                subsystem.category().characters(),
                Uses.of(level, system.functions()).inWords()));
        level.channels()
                .forEach(channel -> facts.add(new Fact(
                        "Channel " + channel.channel().name().characters(),
                        FunctionChapter.characters(channel.channel().parts()))));
        level.commonCause()
                .ifPresent(score -> facts.add(new Fact(
                        "Against common causes",
                        Workings.shown(score),
                        "of at least " + standard.leastScore().quantity() + "; "
                                + subsystem.commonCause().stream()
                                        .map(measure -> measure(measure, standard))
                                        .collect(Collectors.joining("; ")))));
        subsystem.test().ifPresent(test -> facts.add(test(test)));
        lookup(level.pfh().expression())
                .ifPresent(cell -> facts.add(new Fact(
                        "Read in the table",
                        cell.cell().toString(),
                        cell.taken() + "; " + cell.reference().clause() + ", "
                                + cell.reference().standing().words())));
        facts.add(new Fact(
                "Performance level",
                Workings.shown(level.level()),
                Workings.reason(level.level()).orElse("")));
        return new Section(
                level.tag(),
                subsystem.name().characters(),
                List.of(new Facts(facts), workings.wideRows("Recomputed", level.derived(), level.recorded())));
    }

    private static String measure(Subsystem.CommonCause measure, ControlStandard standard) {
        return measure.measure()
                        .value()
                        .filter(standard.commonCauseMeasures()::contains)
                        .map(word -> standard.score(word).quantity() + " for ")
                        .orElse("")
                + measure.measure().characters().replace('-', ' ') + ": "
                + measure.how().characters();
    }

    private static Fact test(Subsystem.Test test) {
        return new Fact(
                "Tested",
                test.every().value().isPresent()
                        ? "every " + test.every().characters() + ", demanded every "
                                + test.demandedEvery().characters()
                        : "when it is demanded",
                (test.every().value().isPresent() ? "" : test.whenDemanded().characters() + "; ") + "by "
                        + FunctionChapter.characters(test.equipment()));
    }

    private static Optional<Lookup> lookup(Term term) {
        return term instanceof Lookup lookup ? Optional.of(lookup) : Optional.empty();
    }

    private static Section parts(List<PartLife> parts, Workings workings) {
        return new Section(
                "",
                "Parts",
                List.of(
                        listed(parts),
                        Workings.symbols(parts),
                        workings.rows("Recomputed for each part", "Part", parts)));
    }

    private static Table listed(List<PartLife> parts) {
        return new Table(
                "Parts as stated",
                List.of(
                        Column.text("Part", 6),
                        Column.text("Told by its source", 6),
                        Column.text("Operated", 4),
                        Column.text("Faults found (DC)", 6)),
                parts.stream()
                        .map(life -> List.of(
                                life.tag() + "\n" + life.part().name().characters(),
                                told(life.part()),
                                life.part()
                                        .operations()
                                        .map(SubsystemChapter::operated)
                                        .orElse(NONE),
                                coverage(life.part())))
                        .toList());
    }

    private static String told(Part part) {
        String figures = Stream.of(
                        Map.entry("MTTF_D", part.mttfd()),
                        Map.entry("MTTF", part.mttf()),
                        Map.entry("B10_D", part.b10d()),
                        Map.entry("B10", part.b10()),
                        Map.entry("λ", part.failureRate()),
                        Map.entry("λ_D", part.dangerousFailureRate()),
                        Map.entry("dangerous share", part.dangerous()))
                .filter(way -> way.getValue().value().isPresent())
                .map(way -> way.getKey() + " " + way.getValue().characters())
                .collect(Collectors.joining(", "));
        return figures + "; " + part.source().characters()
                + part.wellTried().value().map(why -> "; well-tried: " + why).orElse("");
    }

    private static String operated(Part.Operations operations) {
        String days = operations.days().characters() + " days a year, ";
        return operations.perDay().value().isPresent()
                ? days + operations.perDay().characters() + " times a day"
                : days + operations.hours().characters() + " a day, every "
                        + operations.cycle().characters();
    }

    private static String coverage(Part part) {
        return part.coverage()
                .value()
                .map(share -> part.coverage().characters() + " by "
                        + FunctionChapter.characters(part.monitoredBy()) + ": "
                        + part.monitoring().characters())
                .orElse("none");
    }
}
