package org.cellfile.subject.safeguard;

import java.util.List;
import java.util.Optional;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Given;

/**
 * A lock that keeps a door closed after the stop was asked for.
 *
 * @param releases {@code after-time} or {@code at-standstill}
 * @param held how long it keeps the door closed; of one that releases after a time
 * @param watchedBy what finds out that the hazard stands still; of one that releases then
 */
record GuardLocking(Stated<String> releases, Stated<Quantity> held, Stated<String> watchedBy, Stated<String> source) {

    private static final String AFTER_TIME = "after-time";
    private static final String AT_STANDSTILL = "at-standstill";

    static Optional<GuardLocking> read(Section safeguard) {
        return safeguard.sectionIfStated("guard-locking").map(section -> {
            Stated<String> releases = section.word("releases", List.of(AFTER_TIME, AT_STANDSTILL));
            boolean afterTime = releases.value().filter(AFTER_TIME::equals).isPresent();
            boolean atStandstill =
                    releases.value().filter(AT_STANDSTILL::equals).isPresent();
            GuardLocking locking = new GuardLocking(
                    releases,
                    afterTime
                            ? section.positive("held", Dimension.TIME)
                            : new Stated.Missing<>(section.where(), "held"),
                    atStandstill
                            ? section.statement("watched-by")
                            : new Stated.Missing<>(section.where(), "watched-by"),
                    section.text("source"));
            section.close();
            return locking;
        });
    }

    boolean atStandstill() {
        return releases.value().filter(AT_STANDSTILL::equals).isPresent();
    }

    Given heldTime() {
        return new Given("t_h", "time the lock keeps the door closed, " + source.characters(), held);
    }

    Fact fact() {
        return new Fact(
                "Guard locking",
                atStandstill() ? "releases at standstill" : "releases after " + held.characters(),
                (atStandstill() ? "watched by " + watchedBy.characters() + "; " : "") + source.characters());
    }

    /**
     * The time held, and the time somebody then needs to reach the hazard; together they are the longest response time.
     *
     * @param longest overall response time the installed distance allows
     */
    List<Derived> derived(String tag, Derived longest) {
        return List.of(
                new Derived(
                        tag,
                        "held-time",
                        "time the lock keeps the door closed",
                        "t_h",
                        "as stated",
                        heldTime(),
                        Rounding.down(Quantity.seconds("0.001"))),
                new Derived(
                        tag,
                        "time-to-reach",
                        "time to reach the hazard from the released door",
                        "t_r",
                        "difference",
                        new Difference(longest, heldTime()),
                        Rounding.down(Quantity.seconds("0.001"))));
    }
}
