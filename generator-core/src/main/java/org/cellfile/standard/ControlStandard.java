package org.cellfile.standard;

import java.util.Optional;
import java.util.Set;
import org.cellfile.trace.Fixed;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Term;

/** What performance a safety function needs and reaches: the subject of ISO 13849-1. */
public interface ControlStandard extends Edition {

    /** The required performance level of a hazard by the risk graph; withheld where a parameter was not stated. */
    Term requiredLevel(Exposure exposure);

    /** The performance level of a frequency of dangerous failure, in 1/h; withheld where it is too high for any. */
    Term level(Term pfh);

    /** The frequency of dangerous failure of a structure, in 1/h, in the row at or below the mean time to dangerous failure. */
    Term pfh(Category category, Term mttfd, Term averageCoverage);

    /** The share of failures that is dangerous where nobody knows. */
    Fixed dangerousShare();

    /** The share of parts that has failed dangerously after the number of operations B10_D. */
    Fixed wornShare();

    /** How long a part is used where its maker names no other time, in years. */
    Fixed missionTime();

    /** The most that counts of the mean time to dangerous failure of a channel, in years. */
    Fixed mostOfChannel(Category category);

    /** How many channels a category has, and that no part stands in two of them. */
    Reference structures();

    /** What the parts of category 1 are. */
    Reference wellTriedComponents();

    /** The highest performance level that a category reaches, whatever its parts; empty where it reaches every one. */
    Optional<Fixed> highestLevel(Category category);

    /** The least that a channel of a category must have, in years. */
    Fixed leastOfChannel(Category category);

    /** The least average coverage of a category that is tested. */
    Fixed leastCoverage(Category category);

    /** The measures against common causes that score, by word. */
    Set<String> commonCauseMeasures();

    /** What one of them scores. */
    Fixed score(String measure);

    /** What they must score together. */
    Fixed leastScore();

    /** How often a tested channel is tested for each time it is demanded. */
    Fixed testsForEachDemand();

    /** The part of the mean time to dangerous failure of the tested channel that the test equipment must have. */
    Fixed shareOfTestEquipment();
}
