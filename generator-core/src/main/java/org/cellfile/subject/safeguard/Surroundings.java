package org.cellfile.subject.safeguard;

import java.util.List;
import java.util.Optional;
import org.cellfile.standard.Approach;
import org.cellfile.standard.PositioningStandard;
import org.cellfile.standard.ReachStandard;
import org.cellfile.standard.RobotCellStandard;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Term;

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

        private Term farthest(
                String symbol, String way, java.util.function.Function<ReachStandard, Optional<Term>> rule) {
            List<Term> known =
                    editions.stream().map(rule).flatMap(Optional::stream).toList();
            if (known.isEmpty()) {
                return org.cellfile.trace.Withheld.noRule(
                        symbol, names() + " has no rule for " + way + ", and no other edition in force has one");
            }
            return Requirement.greatest(known);
        }

        /** The editions, for the clause of what rests on all of them. */
        public String names() {
            return String.join(" and ", editions.stream().map(ReachStandard::id).toList());
        }
    }
}
