package org.cellfile.subject.function;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
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
import org.cellfile.quantity.Quantity;
import org.cellfile.source.Stated;
import org.cellfile.standard.ControlStandard;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.subject.safeguard.Safeguard;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Drawing;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Term;

/** How the safety functions are printed. */
public final class FunctionChapter {

    private static final String NONE = "–";

    private FunctionChapter() {}

    public static Chapter chapter(List<FunctionLevel> functions, ControlStandard standard, Workings workings) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph("The performance levels were recomputed by " + standard.id()
                + ". What a function must reach comes from the hazards it serves, from the standards named and from what else"
                + " is stated; what it reaches is limited by the sum of the frequencies of its subsystems and by the weakest"
                + " of them. A frequency (PFH_D) is that of a dangerous failure in an hour of operation. That of a subsystem"
                + " built from parts is read in the table of Annex K, in the row at or next below its mean time to dangerous"
                + " failure, never between rows; that table is held here from memory except the cells that the register of"
                + " fixed values names as published. The copy of the standard and licensed practice govern over every figure"
                + " printed here."));
        if (functions.isEmpty()) {
            blocks.add(new Paragraph("No safety function is listed for this cell."));
        } else {
            blocks.add(summary(functions));
            blocks.addAll(LevelChart.drawings(functions));
        }
        functions.forEach(function -> blocks.add(section(function)));
        if (!functions.isEmpty()) {
            blocks.add(new Section(
                    "", "Workings", List.of(workings.rows("Recomputed for each function", "Function", functions))));
        }
        return new Chapter("functions", "Safety functions", blocks);
    }

    private static Table summary(List<FunctionLevel> functions) {
        return new Table(
                "Required and reached",
                List.of(
                        Column.text("Function", 8),
                        Column.text("Required", 2),
                        Column.text("Reached", 2),
                        Column.text("By the sum", 3),
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

    /** The subsystems that are weaker than the sum would allow; else the sum. */
    private static String limit(FunctionLevel function) {
        List<String> weaker = function.stages().stream()
                .flatMap(stage -> stage.subsystem().stream())
                .filter(level -> level.level().value().equals(function.reached().value())
                        && !function.reached()
                                .value()
                                .equals(function.levelBySum().value()))
                .map(SubsystemLevel::tag)
                .distinct()
                .toList();
        return weaker.isEmpty() ? "the sum" : String.join(", ", weaker);
    }

    private static Section section(FunctionLevel level) {
        SafetyFunction function = level.function();
        List<Block> blocks = new ArrayList<>();
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
                new Fact("Required", Workings.shown(level.required()), because(level)),
                new Fact(
                        "Reached",
                        Workings.shown(level.reached()),
                        Stream.concat(reason(level.levelBySum()), Stream.of("limited by " + limit(level)))
                                .collect(Collectors.joining("; ")))));
        level.triggers()
                .forEach(guarding -> guarding.responseTime().ifPresent(sum -> facts.add(response(guarding, sum))));
        blocks.add(new Facts(facts));
        blocks.add(ChainDrawing.of(level));
        blocks.add(chain(level));
        return new Section(level.tag(), function.name().characters(), blocks);
    }

    /** The comparison that decided on a level. */
    private static Stream<String> reason(Derived level) {
        List<String> reasons = Drawing.of(level).remarks();
        return reasons.stream().skip(Math.max(0, reasons.size() - 1));
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

    private static Table chain(FunctionLevel level) {
        return new Table(
                "The chain",
                List.of(
                        Column.text("Place", 2),
                        Column.text("Subsystem", 5),
                        Column.text("Category", 2),
                        Column.text("Links of the response time", 6),
                        Column.text("PL", 2),
                        Column.figures("PFH_D", 3),
                        Column.figures("Share in %", 2)),
                level.stages().stream()
                        .map(stage -> List.of(
                                stage.element().place().characters(),
                                stage.element().subsystem().characters(),
                                stage.subsystem()
                                        .map(one -> one.subsystem().category().characters())
                                        .orElse(NONE),
                                links(stage.element(), level.triggers()),
                                stage.subsystem()
                                        .map(one -> Workings.shown(one.level()))
                                        .orElse(NONE),
                                stage.subsystem()
                                        .map(one -> Workings.shown(one.pfh()))
                                        .orElse(NONE),
                                stage.subsystem()
                                        .flatMap(one -> share(one.pfh(), level.pfh()))
                                        .orElse(NONE)))
                        .toList());
    }

    /** Each link that the subsystem carries, with its time at each safeguard that has it. */
    private static String links(SafetyFunction.Element element, List<Guarding> triggers) {
        if (element.links().isEmpty()) {
            return triggers.isEmpty() ? NONE : "in the stop that was measured";
        }
        return element.links().stream()
                .map(name -> {
                    List<String> times = triggers.stream()
                            .flatMap(guarding -> guarding.safeguard().links().stream()
                                    .filter(link -> link.name().value().equals(name.value()))
                                    .map(link -> link.time().characters()
                                            + (triggers.size() == 1 ? "" : " at " + guarding.tag())))
                            .toList();
                    return name.characters() + (times.isEmpty() ? "" : ": " + String.join(", ", times));
                })
                .collect(Collectors.joining("; "));
    }

    private static Optional<String> share(Derived part, Derived whole) {
        return part.value()
                .flatMap(one -> whole.value()
                        .filter(sum -> !sum.zero())
                        .map(sum -> one.coherent()
                                .multiply(BigDecimal.valueOf(100))
                                .divide(sum.coherent(), 1, RoundingMode.HALF_UP)
                                .toString()));
    }

    /** As it was derived for the distance of the safeguard. The last of the times added is the stop. */
    private static Fact response(Guarding guarding, Derived sum) {
        Safeguard safeguard = guarding.safeguard();
        List<Term> times = sum.expression().operands();
        Term stop = times.get(times.size() - 1);
        return new Fact(
                "Response time",
                Workings.shown(sum),
                Stream.concat(
                                safeguard.links().stream()
                                        .map(link -> link.name().characters() + " "
                                                + link.time().characters()),
                                Stream.of(characters(safeguard.stopTests()) + " "
                                        + stop.value().map(Quantity::toString).orElse(NONE)))
                        .collect(Collectors.joining(" + ", "", ", as derived under " + sum.tag())));
    }

    static String characters(List<? extends Stated<?>> stated) {
        return stated.stream().map(Stated::characters).collect(Collectors.joining(", "));
    }
}
