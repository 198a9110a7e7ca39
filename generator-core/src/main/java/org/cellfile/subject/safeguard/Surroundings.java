package org.cellfile.subject.safeguard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.cellfile.standard.Approach;
import org.cellfile.standard.Edition;
import org.cellfile.standard.PositioningStandard;
import org.cellfile.standard.ReachStandard;
import org.cellfile.standard.RobotCellStandard;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/**
 * What a safeguard's position depends on besides the safeguard itself.
 *
 * @param positioning the edition it is recomputed under
 * @param rules the other editions in force
 */
public record Surroundings(PositioningStandard positioning, Rules rules, Approach approach) {

    /** Tag of the safeguard, or of its recomputation under one of several editions. */
    public String tag() {
        return approach.tag();
    }

    public Reach reach() {
        return new Reach(rules.reach);
    }

    /** The editions in force for a safeguard; of each subject one or more. */
    public record Rules(
            List<PositioningStandard> positioning, List<ReachStandard> reach, List<RobotCellStandard> robotCell) {

        public Rules {
            positioning = List.copyOf(positioning);
            reach = List.copyOf(reach);
            robotCell = List.copyOf(robotCell);
        }

        /** True when an edition of each subject is in force. */
        public boolean complete() {
            return !positioning.isEmpty() && !reach.isEmpty() && !robotCell.isEmpty();
        }

        /**
         * The same with an edition in place of those of its subjects.
         *
         * @param positioned true for a safeguard whose position is a matter of positioning standards
         * @param used whether the safeguard rests on an edition now in force
         * @return empty when it makes no difference to the safeguard what stands there
         */
        Optional<Rules> with(Edition other, boolean positioned, Predicate<Edition> used) {
            boolean positions = other instanceof PositioningStandard && positioned;
            boolean reaches = other instanceof ReachStandard && reach.stream().anyMatch(used);
            boolean encloses =
                    other instanceof RobotCellStandard && robotCell.stream().anyMatch(used);
            if (!positions && !reaches && !encloses) {
                return Optional.empty();
            }
            return Optional.of(new Rules(
                    positions ? List.of((PositioningStandard) other) : positioning,
                    reaches ? List.of((ReachStandard) other) : reach,
                    encloses ? List.of((RobotCellStandard) other) : robotCell));
        }

        /** Those in whose place it would stand. */
        List<Edition> replacedBy(Edition other, boolean positioned, Predicate<Edition> used) {
            List<Edition> replaced = new ArrayList<>();
            with(other, positioned, used).ifPresent(changed -> {
                replaced.addAll(positioning);
                replaced.addAll(reach);
                replaced.addAll(robotCell);
                replaced.removeAll(changed.positioning);
                replaced.removeAll(changed.reach);
                replaced.removeAll(changed.robotCell);
            });
            return replaced;
        }

        /** The least height of a fixed guard; where several editions are in force, the greatest of theirs. */
        Term leastFenceHeight() {
            return Requirement.greatest(
                    robotCell.stream().map(RobotCellStandard::leastFenceHeight).toList());
        }

        /** The widest gap below a fixed guard; where several editions are in force, the least of theirs. */
        Term widestGapBelow() {
            return Requirement.least(
                    robotCell.stream().map(RobotCellStandard::widestGapBelow).toList());
        }
    }

    /**
     * How far limbs reach, by every edition in force that has a rule for it; the farthest counts.
     *
     * @param editions in force
     */
    public record Reach(List<ReachStandard> editions) {

        /** Through an opening with fingers, hand or arm. */
        public Term through(ReachStandard.Opening opening) {
            return farthest("s_r", "reaching through an opening", edition -> edition.through(opening));
        }

        /**
         * The same, where an edition's table for arms ends and the edition goes on in another way. One that does not go on has no
         * rule for the opening, whatever the others have.
         *
         * @param beyond what counts in an edition for openings wider than its table
         */
        Term through(ReachStandard.Opening opening, Function<ReachStandard, Optional<Term>> beyond) {
            return farthest(
                    "s_r",
                    "reaching through an opening",
                    edition -> edition.through(opening)
                            .map(arms -> Requirement.noRule(arms)
                                    ? beyond.apply(edition).orElse(arms)
                                    : arms));
        }

        /** Through an opening with toes, foot or leg. */
        public Term throughWithLegs(ReachStandard.Opening opening) {
            return farthest(
                    "s_l", "reaching through an opening with the legs", edition -> edition.throughWithLegs(opening));
        }

        /** Over a structure of that height. */
        public Term over(Term zoneLowest, Term zoneHighest, Term height) {
            return farthest("c", "reaching over a structure", edition -> edition.over(zoneLowest, zoneHighest, height));
        }

        /** Around the end of a structure. */
        public Term around(String support) {
            return farthest("s_r", "reaching around the end of a structure", edition -> edition.around(support));
        }

        /** The widest opening of that shape through which no body passes; the least of the editions that have a limit. */
        Optional<Term> widestWithoutBody(String shape) {
            List<Fixed> known = editions.stream()
                    .map(edition -> edition.widestWithoutBody(shape))
                    .flatMap(Optional::stream)
                    .toList();
            return known.isEmpty() ? Optional.empty() : Optional.of(Requirement.least(known));
        }

        private Term farthest(String symbol, String way, Function<ReachStandard, Optional<Term>> rule) {
            List<Term> known =
                    editions.stream().map(rule).flatMap(Optional::stream).toList();
            if (known.isEmpty()) {
                return Withheld.noEdition(
                        symbol, names() + " has no rule for " + way + ", and no other edition in force has one");
            }
            return Requirement.greatest(known);
        }

        /** The clause of what rests on a table of the only edition, or on the rules of several. */
        public String clause(String place) {
            return editions.size() == 1 ? names() + ", " + place : "the greatest of " + names();
        }

        /** The editions, for the clause of what rests on all of them. */
        public String names() {
            return String.join(" and ", editions.stream().map(ReachStandard::id).toList());
        }
    }
}
