package org.cellfile.subject.function;

import java.util.ArrayList;
import java.util.List;
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
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;
import org.cellfile.standard.ControlStandard;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.subject.safeguard.Safeguard;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Formula;
import org.cellfile.trace.Lookup;
import org.cellfile.trace.Term;

/** How the safety functions are printed. */
public final class FunctionChapter {

    private static final String NONE = "–";

    private FunctionChapter() {}

    public static Chapter chapter(List<FunctionLevel> functions, ControlStandard standard) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph("The performance levels were recomputed by " + standard.id()
                + ": what a function has to reach by its 4.3, the sum and the lowest level by 6.3, the level that a sum allows by"
                + " 4.5.1. What a function must reach comes from the hazards it serves, from the standards named and from what else"
                + " is stated; what it reaches is limited by the sum of the frequencies of its subsystems and by the weakest"
                + " of them. A frequency (PFH_D) is that of a dangerous failure in an hour of operation. That of a subsystem"
                + " built from parts is read in the table of Annex K, in the row at or next below its mean time to dangerous"
                + " failure, never between rows; that table is held here from memory except the cells that the register of"
                + " fixed values names as published. The copy of the standard and licensed practice govern over every figure"
                + " printed here."));
        if (functions.isEmpty()) {
            blocks.add(new Paragraph("No safety function is listed for this cell."));
        } else {
            blocks.addAll(LevelChart.drawings(functions));
            blocks.add(summary(functions));
        }
        functions.forEach(function -> blocks.add(section(function)));
        return new Chapter("functions", "Safety functions", blocks);
    }

    private static Table summary(List<FunctionLevel> functions) {
        return new Table(
                "Required and reached",
                List.of(
                        Column.text("Function", 24),
                        Column.text("Required", 2),
                        Column.text("Reached", 2),
                        Column.text("By\u00a0sum", 2),
                        Column.text("Limited by", 5),
                        Column.figures("PFH_D", 3)),
                functions.stream()
                        .map(function -> List.of(
                                function.tag() + "\n"
                                        + function.function().name().characters(),
                                Workings.shown(function.required()),
                                Workings.shown(function.reached()),
                                Workings.shown(function.levelBySum()),
                                limit(function),
                                Workings.shown(function.pfh())))
                        .toList());
    }

    private static String limit(FunctionLevel function) {
        List<String> weaker = weaker(function);
        return weaker.isEmpty() ? "the sum" : String.join(", ", weaker);
    }

    /** The subsystems that are weaker than the sum would allow. */
    private static List<String> weaker(FunctionLevel function) {
        return function.stages().stream()
                .flatMap(stage -> stage.subsystem().stream())
                .filter(level -> level.level().value().equals(function.reached().value())
                        && !function.reached()
                                .value()
                                .equals(function.levelBySum().value()))
                .map(SubsystemLevel::tag)
                .distinct()
                .toList();
    }

    private static Section section(FunctionLevel level) {
        SafetyFunction function = level.function();
        List<Fact> facts = new ArrayList<>(List.of(
                new Fact(
                        "Triggered by",
                        characters(function.triggeredBy()),
                        "when " + function.trigger().characters()),
                new Fact(
                        "Reaction",
                        function.reaction().characters(),
                        function.stopCategory()
                                        .value()
                                        .map(category -> "stop category " + category + ", ")
                                        .orElse("")
                                + "in " + characters(function.modes())),
                working(level, level.required(), "Required", because(level)),
                working(level, level.pfh(), "PFH_D", sum(level)),
                working(level, level.reached(), "Reached", lowest(level))));
        level.triggers()
                .forEach(guarding ->
                        guarding.responseTime().ifPresent(sum -> facts.add(response(level, guarding, sum))));
        return new Section(
                level.tag(), function.name().characters(), List.of(new Facts(facts), ChainDrawing.of(level)));
    }

    /** A result with how it came about and what was recorded. */
    private static Fact working(FunctionLevel level, Derived derived, String label, String how) {
        return new Fact(
                label,
                Workings.shown(derived),
                Stream.of(how, Workings.briefly(derived, level.recorded()))
                        .filter(text -> !text.isEmpty())
                        .collect(Collectors.joining("; ")));
    }

    /** The frequencies that are added, in the order of the chain. */
    private static String sum(FunctionLevel level) {
        return level.subsystems()
                .map(one -> Formula.shown(one.pfh()) + known(one))
                .collect(Collectors.joining(" + "));
    }

    /** How what was read in the table of Annex K is known, in a word or two. */
    private static String known(SubsystemLevel level) {
        return level.pfh().expression() instanceof Lookup lookup
                ? " (Annex K, "
                        + lookup.reference()
                                .standing()
                                .words()
                                .replaceFirst("[;:(].*", "")
                                .strip() + ")"
                : "";
    }

    /** The level that the sum allows, and whether a subsystem is weaker. */
    private static String lowest(FunctionLevel level) {
        String bySum = Workings.shown(level.levelBySum()) + " by the sum"
                + Workings.reason(level.levelBySum())
                        .map(reason -> " (" + reason + ")")
                        .orElse("");
        List<String> weaker = weaker(level);
        return bySum
                + (weaker.isEmpty()
                        ? ", no subsystem is weaker"
                        : ", limited to " + Workings.shown(level.reached()) + " by " + String.join(", ", weaker));
    }

    /** Each reason for the required level, with what it asks by itself. */
    private static String because(FunctionLevel level) {
        Stream<String> hazards = level.due().risks().stream()
                .map(risk -> Workings.shown(risk.required()) + " for the hazard " + risk.tag());
        Stream<String> minimums = level.due().minimums().stream().map(FunctionChapter::minimum);
        Stream<String> stated = level.function().requires().stream()
                .map(requires -> requires.level().characters() + " stated: "
                        + requires.because().characters());
        return Stream.of(hazards, minimums, stated).flatMap(each -> each).collect(Collectors.joining("; "));
    }

    private static String minimum(Fixed minimum) {
        return minimum.quantity() + " by " + minimum.reference().clause()
                + (minimum.reference().fromMemory() ? " (from memory)" : "");
    }

    /** As it was derived for the distance of the safeguard. The last of the times added is the stop. */
    private static Fact response(FunctionLevel level, Guarding guarding, Derived sum) {
        Safeguard safeguard = guarding.safeguard();
        List<Term> times = sum.expression().operands();
        Term stop = times.get(times.size() - 1);
        String measured = characters(safeguard.stopTests()) + " "
                + stop.value().map(Quantity::toString).orElse(NONE);
        String within = level.stages().stream()
                .map(FunctionLevel.Stage::element)
                .filter(element -> element.links().isEmpty())
                .map(element -> element.subsystem().characters())
                .collect(Collectors.joining(", "));
        return new Fact(
                level.triggers().size() == 1 ? "Response time" : "Response time of " + guarding.tag(),
                Workings.shown(sum),
                Stream.concat(
                                safeguard.links().stream()
                                        .map(link -> link.name().characters() + " "
                                                + link.time().characters()
                                                + carrier(level, link.name())),
                                Stream.of(within.isEmpty() ? measured : measured + " (measured with " + within + ")"))
                        .collect(Collectors.joining(" + ", "", ", derived under " + sum.tag())));
    }

    /** The subsystem that carries a link. */
    private static String carrier(FunctionLevel level, Stated<String> link) {
        return level.stages().stream()
                .map(FunctionLevel.Stage::element)
                .filter(element -> element.links().stream()
                        .anyMatch(name -> name.characters().equals(link.characters())))
                .map(element -> " (" + element.subsystem().characters() + ")")
                .findFirst()
                .orElse("");
    }

    static String characters(List<? extends Stated<?>> stated) {
        return stated.stream().map(Stated::characters).collect(Collectors.joining(", "));
    }
}
