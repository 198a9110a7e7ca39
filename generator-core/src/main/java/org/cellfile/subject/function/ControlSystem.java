package org.cellfile.subject.function;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.cellfile.claim.Recomputed;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.standard.ControlStandard;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.due.Due;
import org.cellfile.subject.hazard.Risk;
import org.cellfile.subject.safeguard.Guarding;

/** The safety-related control system of the cell: parts, subsystems, and the safety functions they carry out. */
public record ControlSystem(
        Described described, List<PartLife> parts, List<SubsystemLevel> subsystems, List<FunctionLevel> functions) {

    /**
     * As it was stated.
     *
     * @param functionsStated true when functions are written, whether they could be read or not
     */
    public record Described(
            List<Part> parts, List<Subsystem> subsystems, List<SafetyFunction> functions, boolean functionsStated) {

        public static Described read(Section top) {
            boolean stated = top.has("functions");
            List<SafetyFunction> functions = Section.each(list(top, "functions", stated), SafetyFunction::read);
            List<Subsystem> subsystems = Section.each(list(top, "subsystems", !functions.isEmpty()), Subsystem::read);
            boolean built =
                    subsystems.stream().anyMatch(one -> one.parts().findAny().isPresent());
            return new Described(Section.each(list(top, "parts", built), Part::read), subsystems, functions, stated);
        }

        /** What functions go through, and what subsystems are built of, must be described; it can be left out otherwise. */
        private static List<Section> list(Section top, String key, boolean due) {
            return due ? top.list(key) : top.listIfStated(key);
        }

        /** What triggers the functions that go through a thing: a part, a subsystem, or the function itself. */
        public List<String> triggers(String tag) {
            return functions.stream()
                    .filter(function -> function.tag().characters().equals(tag)
                            || function.chain().stream().anyMatch(element -> isOrHolds(element, tag)))
                    .flatMap(function -> function.triggeredBy().stream())
                    .map(Stated::characters)
                    .distinct()
                    .toList();
        }

        private boolean isOrHolds(SafetyFunction.Element element, String tag) {
            return element.subsystem().characters().equals(tag)
                    || subsystems.stream()
                            .filter(subsystem -> subsystem
                                    .tag()
                                    .value()
                                    .equals(element.subsystem().value()))
                            .flatMap(Subsystem::parts)
                            .anyMatch(part -> part.characters().equals(tag));
        }

        /** True when nothing of it is described. */
        public boolean empty() {
            return parts.isEmpty() && subsystems.isEmpty() && functions.isEmpty();
        }
    }

    /** Where no edition says how to recompute it. */
    public static ControlSystem notRecomputed(Described described) {
        return new ControlSystem(described, List.of(), List.of(), List.of());
    }

    /**
     * Recomputes it.
     *
     * @param devices that complement the safeguards
     * @param minimums what standards ask of a function, whatever the hazard
     */
    public static ControlSystem of(
            Described described,
            ControlStandard standard,
            List<Risk> risks,
            List<Guarding> guardings,
            List<ComplementaryDevice> devices,
            Function<SafetyFunction, Minimums> minimums) {
        List<PartLife> parts = described.parts().stream()
                .map(part -> new PartLife(part, standard))
                .toList();
        List<SubsystemLevel> subsystems = described.subsystems().stream()
                .map(one -> new SubsystemLevel(one, tag -> named(parts, tag), standard))
                .toList();
        return new ControlSystem(
                described,
                parts,
                subsystems,
                described.functions().stream()
                        .map(function -> new FunctionLevel(
                                function,
                                tag -> named(subsystems, tag),
                                FunctionLevel.Triggers.of(function, guardings, devices),
                                new FunctionLevel.Due(asking(function, risks), minimums.apply(function)),
                                standard))
                        .toList());
    }

    private static List<Risk> asking(SafetyFunction function, List<Risk> risks) {
        return risks.stream()
                .filter(risk -> function.triggeredBy().stream()
                        .flatMap(tag -> tag.value().stream())
                        .anyMatch(risk.hazard()::servedBy))
                .toList();
    }

    private static <R extends Recomputed> Optional<R> named(List<R> things, Stated<String> tag) {
        return things.stream()
                .filter(one -> tag.value().equals(Optional.of(one.tag())))
                .findFirst();
    }

    /** Everything with derived values, from the parts to the functions. */
    public List<Recomputed> recomputed() {
        List<Recomputed> all = new ArrayList<>(parts);
        all.addAll(subsystems);
        all.addAll(functions);
        return all;
    }

    /** Every replacement of a part, or of a subsystem that is replaced as a whole. */
    public List<Due> dues() {
        return Stream.concat(
                        parts.stream().map(PartLife::due), subsystems.stream().map(SubsystemLevel::due))
                .flatMap(Optional::stream)
                .toList();
    }
}
