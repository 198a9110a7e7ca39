package org.cellfile.subject.function;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.source.Stated;

/** What cannot be as it was stated of a part. */
final class PartFaults {

    /** More hours than a day has, or more days than a year has. */
    static final FindingId CALENDAR = new FindingId("part.beyond-the-calendar");

    /** A share of its failures that is more than all of them. */
    static final FindingId MORE_THAN_ALL = new FindingId("part.more-than-all");

    /** Some of its failures are said to be found, and nothing is named that finds them. */
    static final FindingId NOT_MONITORED = new FindingId("part.not-monitored");

    /** It is said to find its own failures. */
    static final FindingId BY_ITSELF = new FindingId("part.monitored-by-itself");

    private static final Quantity DAY = Quantity.of("24", Unit.HOUR);
    private static final Quantity LEAP_YEAR = Quantity.of("366", Unit.PER_YEAR);

    private final Part part;
    private final String tag;
    private final List<Finding> findings = new ArrayList<>();

    PartFaults(Part part) {
        this.part = part;
        this.tag = part.tag().characters();
    }

    List<Finding> findings() {
        part.operations().ifPresent(this::calendar);
        share(part.dangerous(), "share of the failures that is dangerous");
        share(part.coverage(), "diagnostic coverage");
        monitored();
        return findings;
    }

    private void refuse(FindingId id, Stated<?> at, String sentence, String help) {
        findings.add(Finding.refuses(id, tag, at.where(), sentence, help));
    }

    /** A cycle may be longer than a day of work: what is operated once a week has one of seven days. */
    private void calendar(Part.Operations operations) {
        if (exceeds(operations.hours(), DAY)) {
            refuse(
                    CALENDAR,
                    operations.hours(),
                    "`" + tag + "` is said to be in use for "
                            + operations.hours().characters() + " a day, and a day has 24 h",
                    "state the hours of operation in a day, all shifts together");
        }
        if (exceeds(operations.days(), LEAP_YEAR)) {
            refuse(
                    CALENDAR,
                    operations.days(),
                    "`" + tag + "` is said to be in use on " + operations.days().characters()
                            + " days a year, and no year has more than 366",
                    "state the days of operation in a year");
        }
    }

    private void share(Stated<Quantity> share, String words) {
        if (share.value().filter(one -> !Part.notMoreThanAll(one)).isPresent()) {
            refuse(
                    MORE_THAN_ALL,
                    share,
                    "the " + words + " of `" + tag + "` is " + share.characters() + ", more than all of its failures",
                    "look the figure up again, and the unit it has there");
        }
    }

    private static boolean exceeds(Stated<Quantity> stated, Quantity most) {
        return stated.value().filter(one -> one.compareTo(most) > 0).isPresent();
    }

    private void monitored() {
        if (part.coverage().value().isPresent() && part.monitoredBy().isEmpty()) {
            refuse(
                    NOT_MONITORED,
                    part.coverage(),
                    "of the dangerous failures of `" + tag + "`, "
                            + part.coverage().characters()
                            + " are said to be found, and nothing is named that finds them",
                    "name under `by` the part or subsystem that monitors it, or take `coverage` out: what nobody monitors is not"
                            + " covered");
        }
        part.monitoredBy().stream()
                .filter(by -> by.value().equals(Optional.of(tag)))
                .findFirst()
                .ifPresent(by -> refuse(
                        BY_ITSELF,
                        by,
                        "`" + tag + "` is said to find its own failures",
                        "name the part or subsystem that reads it back and acts when it fails; a part with a test inside it that acts"
                                + " on its own is a subsystem with the figures of its maker"));
    }
}
