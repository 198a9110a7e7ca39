package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Robot;
import org.cellfile.subject.identity.RobotLoad;
import org.cellfile.subject.register.Configuration;
import org.cellfile.subject.register.Configuration.Displayed;
import org.cellfile.subject.register.Unlike;

/** What was tested is not what is installed, or not what is posted. */
@AutoService(Check.class)
public final class RefuseUnlikeConfiguration implements Check {

    public static final FindingId NOT_EQUAL = new FindingId("configuration.not-equal");
    public static final FindingId ANOTHER_CHECKSUM = new FindingId("configuration.another-checksum");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        for (Configuration configuration : cell.registers().configurations()) {
            unlike(configuration).ifPresent(findings::add);
        }
        for (RobotLoad load : cell.robots()) {
            anotherChecksum(load.robot(), cell.registers().configurations()).ifPresent(findings::add);
        }
        return findings;
    }

    private static Optional<Finding> unlike(Configuration configuration) {
        Stated<String> tested = configuration.tested().value();
        List<Displayed> unlike = configuration.displayed().stream()
                .filter(one -> differ(tested, one.value()))
                .toList();
        if (unlike.isEmpty()) {
            return Optional.empty();
        }
        String tag = configuration.tag().characters();
        List<String> because = new ArrayList<>();
        for (Displayed one : configuration.displayed()) {
            because.add("as " + one.state() + ": " + one.value().characters() + ", read on "
                    + one.on().characters() + " (" + one.value().where().position() + ")");
        }
        for (Displayed one : unlike) {
            String words = Unlike.words(tested.characters(), one.value().characters());
            if (!because.contains(words)) {
                because.add(words);
            }
        }
        return Optional.of(Finding.refuses(
                        NOT_EQUAL,
                        tag,
                        unlike.get(0).value().where(),
                        "the configuration `" + tag + "` is not the same as tested"
                                + (configuration.posted().isPresent()
                                        ? ", as installed and as posted"
                                        : " and as installed"),
                        "read all of them again where `shown-at` says; if what is installed is not what was tested, find out who"
                                + " changed what, and test the safeguards it touches")
                .because(because));
    }

    private static Optional<Finding> anotherChecksum(Robot robot, List<Configuration> configurations) {
        Stated<String> checksum = robot.controller().checksum();
        List<Configuration> own = configurations.stream()
                .filter(one -> one.isOf(robot.tag().characters()))
                .toList();
        if (own.isEmpty()
                || !own.stream().allMatch(one -> differ(checksum, one.tested().value()))) {
            return Optional.empty();
        }
        Configuration first = own.get(0);
        Stated<String> tested = first.tested().value();
        return Optional.of(Finding.refuses(
                        ANOTHER_CHECKSUM,
                        robot.tag().characters(),
                        checksum.where(),
                        "the checksum of `" + robot.tag().characters() + "` is " + checksum.characters()
                                + ", and its configuration `" + first.tag().characters() + "` was tested as "
                                + tested.characters() + " (" + tested.where().position() + ")",
                        "read both again; a controller may show several values, and `shown-at` of `"
                                + first.tag().characters() + "` says which is meant")
                .because(List.of(Unlike.words(checksum.characters(), tested.characters()))));
    }

    private static boolean differ(Stated<String> one, Stated<String> other) {
        return one.value()
                .flatMap(value -> other.value().filter(same -> !same.equals(value)))
                .isPresent();
    }
}
