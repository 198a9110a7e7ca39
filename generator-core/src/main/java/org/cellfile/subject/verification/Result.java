package org.cellfile.subject.verification;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Section;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.source.Stated.Missing;
import org.cellfile.subject.identity.Person;
import org.cellfile.subject.verification.Protocol.Reading;

/**
 * What came out of some tests of some things, and what was read off.
 *
 * @param of tags of the things
 * @param tests ids of their tests
 * @param machine {@code stands} or {@code moves}
 * @param readings the keys of what was read off, whether it could be read here or not
 * @param defect what was found, when it failed
 * @param remedy what was done about it; empty while nothing was
 */
public record Result(
        List<Stated<String>> of,
        List<Stated<String>> tests,
        Stated<String> outcome,
        Stated<Quantity> testPiece,
        Stated<Quantity> speed,
        Stated<Quantity> handsApart,
        Stated<String> machine,
        List<String> readings,
        Stated<String> defect,
        Optional<Remedy> remedy,
        Span where) {

    private static final String PASS = "pass";
    private static final String FAIL = "fail";

    /** How the machine is in the tests that look at that. */
    static final String STANDS = "stands";

    static final String MOVES = "moves";

    /** What was done about a defect. */
    public record Remedy(Stated<LocalDate> on, Stated<String> by, Stated<String> how) {
        static Remedy read(Section section) {
            Remedy remedy =
                    new Remedy(section.date("on"), section.reference("by", Person.SORT), section.statement("how"));
            section.close();
            return remedy;
        }
    }

    static Result read(Section section) {
        Stated<String> outcome = section.word("result", Set.of(PASS, FAIL));
        boolean failed = outcome.characters().equals(FAIL);
        return new Result(
                section.references("of", Tested.SORTS),
                section.texts("tests"),
                outcome,
                measured(section, Reading.TEST_PIECE, Dimension.LENGTH),
                measured(section, Reading.SPEED, Dimension.SPEED),
                measured(section, Reading.SYNCHRONISM, Dimension.TIME),
                section.wordIfStated(Reading.STANDS.key(), Set.of(STANDS, MOVES)),
                List.of(Reading.TEST_PIECE, Reading.SPEED, Reading.SYNCHRONISM, Reading.STANDS).stream()
                        .map(Reading::key)
                        .filter(section::has)
                        .toList(),
                failed ? section.statement("defect") : new Missing<>(section.where(), "defect"),
                failed ? section.sectionIfStated("remedied").map(Remedy::read) : Optional.empty(),
                section.where());
    }

    private static Stated<Quantity> measured(Section section, Reading reading, Dimension dimension) {
        return section.has(reading.key())
                ? section.positive(reading.key(), dimension)
                : new Missing<>(section.where(), reading.key());
    }

    static boolean names(List<Stated<String>> list, String wanted) {
        return list.stream().anyMatch(one -> one.characters().equals(wanted));
    }

    /** True when it is about that test of that thing. */
    boolean tells(Tested thing, Protocol.Test test) {
        return names(of, thing.tag().characters()) && names(tests, test.id());
    }

    public boolean passed() {
        return outcome.value().filter(PASS::equals).isPresent();
    }

    public boolean failed() {
        return outcome.value().filter(FAIL::equals).isPresent();
    }

    /** What was read off, for print; empty when nothing was. */
    String read() {
        return Stream.<Stated<?>>of(testPiece, speed, handsApart, machine)
                .filter(one -> one.value().isPresent())
                .map(Stated::characters)
                .findFirst()
                .orElse("");
    }
}
