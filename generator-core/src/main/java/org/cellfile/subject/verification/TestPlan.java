package org.cellfile.subject.verification;

import java.util.List;
import org.cellfile.quantity.Interval;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;

/**
 * How often some tests of some things are done, as the plant has decided. Where several are about a test, the shortest interval
 * counts.
 *
 * @param of tags of the things
 * @param tests ids of their tests; none for all that are periodic
 * @param source why so often: the law, the makers' instructions, the risk assessment
 */
public record TestPlan(
        List<Stated<String>> of, List<Stated<String>> tests, Stated<Interval> every, Stated<String> source) {

    static TestPlan read(Section section) {
        return new TestPlan(
                section.references("of", Tested.SORTS),
                section.textsIfStated("tests"),
                section.interval("every"),
                section.statement("source"));
    }

    /** True when it is about that test of that thing. */
    boolean covers(Tested thing, Protocol.Test test) {
        return Result.names(of, thing.tag().characters()) && (tests.isEmpty() || Result.names(tests, test.id()));
    }
}
