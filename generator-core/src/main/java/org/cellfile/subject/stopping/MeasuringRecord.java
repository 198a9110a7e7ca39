package org.cellfile.subject.stopping;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Competence;
import org.cellfile.subject.identity.Identity;

/** Who measured a stop when and with what, now and before. */
final class MeasuringRecord {

    /** Somebody measured who was not competent for it on that day. */
    static final FindingId NOT_COMPETENT = new FindingId("stopping.measurer-not-competent");

    /** A stop was measured before the cell stood. */
    static final FindingId BEFORE_BUILT = new FindingId("stopping.before-built");

    /** Measurements do not follow each other. */
    static final FindingId ORDER = new FindingId("stopping.history-order");

    /** Nobody has said how often the stop is measured again. */
    static final FindingId NO_INTERVAL = new FindingId("stopping.no-interval");

    private final StopTest test;
    private final Identity identity;

    MeasuringRecord(StopTest test, Identity identity) {
        this.test = test;
        this.identity = identity;
    }

    List<Finding> faults() {
        List<Finding> faults = new ArrayList<>();
        for (EarlierMeasurement one : test.history()) {
            faults.addAll(measurement(one.on(), one.measuredBy(), one.instrument()));
        }
        faults.addAll(measurement(test.on(), test.measuredBy(), test.instrument()));
        faults.addAll(order());
        noInterval().ifPresent(faults::add);
        return faults;
    }

    private List<Finding> measurement(Stated<LocalDate> on, Stated<String> by, Stated<String> with) {
        List<Finding> faults = new ArrayList<>();
        on.value().flatMap(day -> notCompetent(by, day)).ifPresent(faults::add);
        identity.instrument(with)
                .flatMap(one -> one.notCalibrated(tag(), with, on))
                .ifPresent(faults::add);
        on.value().flatMap(day -> beforeBuilt(on, day)).ifPresent(faults::add);
        return faults;
    }

    private Optional<Finding> notCompetent(Stated<String> by, LocalDate day) {
        if (identity.person(by).isEmpty() || identity.competent(by, Competence.STOP_MEASUREMENT, day)) {
            return Optional.empty();
        }
        return Optional.of(Finding.refuses(
                NOT_COMPETENT,
                tag(),
                by.where(),
                "`" + by.characters() + "` measured `" + tag() + "` on " + day + ", and no competence of `"
                        + by.characters() + "` for stop measurement held on that day",
                "state under `competences` what made that person competent then, with its proof; if nothing did, have a"
                        + " competent person measure the stop"));
    }

    private Optional<Finding> beforeBuilt(Stated<LocalDate> on, LocalDate day) {
        Stated<LocalDate> built = identity.dates().built();
        return built.value()
                .filter(day::isBefore)
                .map(first -> Finding.refuses(
                        BEFORE_BUILT,
                        tag(),
                        on.where(),
                        "`" + tag() + "` was measured on " + day + ", before the cell was built on " + first + " ("
                                + built.where().position() + ")",
                        "look the day up in the report of the measurement; what was measured elsewhere or before the cell"
                                + " stood tells nothing about this stop"));
    }

    private List<Finding> order() {
        List<Finding> faults = new ArrayList<>();
        List<Stated<LocalDate>> days = new ArrayList<>();
        test.history().forEach(one -> days.add(one.on()));
        days.add(test.on());
        days.removeIf(day -> day.value().isEmpty());
        for (int i = 1; i < days.size(); i++) {
            LocalDate before = days.get(i - 1).value().orElseThrow();
            LocalDate after = days.get(i).value().orElseThrow();
            if (!before.isBefore(after)) {
                faults.add(order(days.get(i - 1), before, days.get(i), after));
            }
        }
        return faults;
    }

    private Finding order(Stated<LocalDate> first, LocalDate before, Stated<LocalDate> second, LocalDate after) {
        boolean present = second.equals(test.on());
        return Finding.refuses(
                ORDER,
                tag(),
                first.where(),
                before.equals(after)
                        ? "two measurements of `" + tag() + "` are dated " + before + " ("
                                + second.where().position() + ")"
                        : "an earlier measurement of `" + tag() + "` is dated " + before + ", after "
                                + (present ? "the present one of " : "the one that follows it, of ") + after + " ("
                                + second.where().position() + ")",
                "look the days up in the reports; list the earlier measurements from the oldest on, each once and without the"
                        + " present one");
    }

    private Optional<Finding> noInterval() {
        return test.repeatStated()
                ? Optional.empty()
                : Optional.of(Finding.barsRelease(
                        NO_INTERVAL,
                        tag(),
                        test.tag().where(),
                        "nobody has said how often the stop `" + tag() + "` is measured again",
                        "state `interval` with `every` and the `source` that asks for it: the instructions of the maker, the law"
                                + " of the place, or the plant's own rule"));
    }

    private String tag() {
        return test.tag().characters();
    }
}
