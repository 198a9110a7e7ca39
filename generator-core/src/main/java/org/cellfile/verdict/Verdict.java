package org.cellfile.verdict;

import java.util.List;
import org.cellfile.finding.Finding;

/** What is to be done with a cell's description: nothing, or print it. */
public sealed interface Verdict permits Refused, Printable {

    /** Everything found, sorted by place, with the severity it has after deviations were taken into account. */
    List<Finding> findings();

    /** {@code refused}, {@code draft}, {@code releasable} or {@code released}. */
    String word();

    /** What comes of it, as a sentence without capital and full stop. */
    String outcome();
}
