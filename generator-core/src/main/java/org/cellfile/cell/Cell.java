package org.cellfile.cell;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.cellfile.claim.Recomputed;
import org.cellfile.finding.Deviation;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.read.Reading;
import org.cellfile.read.Section;
import org.cellfile.source.SourceFile;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.source.World;
import org.cellfile.standard.Edition;
import org.cellfile.standard.Editions;
import org.cellfile.standard.EmergencyStopStandard;
import org.cellfile.standard.PositioningStandard;
import org.cellfile.standard.ReachStandard;
import org.cellfile.standard.RobotCellStandard;
import org.cellfile.standard.RobotStandard;
import org.cellfile.standard.Standards;
import org.cellfile.subject.complement.Complement;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.complement.Surroundings;
import org.cellfile.subject.hazard.Zone;
import org.cellfile.subject.hazard.ZoneExtent;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.identity.RobotLoad;
import org.cellfile.subject.safeguard.Deviations;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.subject.safeguard.Safeguard;
import org.cellfile.subject.safeguard.Surroundings.Rules;
import org.cellfile.subject.sheet.AutomaticOperation;
import org.cellfile.subject.stopping.StopEvidence;
import org.cellfile.subject.stopping.StopTest;
import org.cellfile.trace.Derived;

/** One cell: what was stated about it, and what was recomputed from that. */
public record Cell(
        Identity identity,
        List<RobotLoad> robots,
        List<StopEvidence> stops,
        List<ZoneExtent> zones,
        List<Guarding> safeguards,
        List<Complement> complementary,
        List<Deviation> deviations,
        AutomaticOperation automaticOperation,
        List<SourceFile> sources) {

    /** The cell chose no edition of a standard that its values need. */
    public static final FindingId NO_EDITION = new FindingId("standard.not-chosen");

    /** The cell names two editions for one subject. */
    public static final FindingId TWO_EDITIONS = new FindingId("standard.two-editions");

    /**
     * Reads and recomputes a cell. What is wrong with its files goes to the findings; empty when an edition is missing, without
     * which nothing can be recomputed.
     */
    public static Optional<Cell> read(World world, Findings findings) {
        Reading.Sources sources = Reading.read(world, findings);
        if (sources.files().isEmpty()) {
            return Optional.empty();
        }
        Section top = sources.top();
        Identity identity = Identity.read(top);
        List<StopTest> tests = Section.each(top.list("stop-tests"), StopTest::read);
        List<Zone> zones = Section.each(top.list("zones"), Zone::read);
        List<Safeguard> safeguards = top.list("safeguards").stream()
                .map(Safeguard::read)
                .flatMap(Optional::stream)
                .toList();
        List<ComplementaryDevice> devices = top.listIfStated("complementary").stream()
                .map(ComplementaryDevice::read)
                .flatMap(Optional::stream)
                .toList();
        List<Deviation> deviations = Deviations.read(top, identity, List.of(Safeguard.SORT, ComplementaryDevice.SORT));
        AutomaticOperation sheet = AutomaticOperation.read(top);
        sources.finish();
        return rules(identity, findings).map(rules -> {
            List<StopEvidence> stops = tests.stream()
                    .map(test -> new StopEvidence(test, identity.instrument(test.instrument()), rules.positioning()))
                    .toList();
            Optional<RobotStandard> robotStandard = identity.standards().of(RobotStandard.class);
            Surroundings around = new Surroundings(
                    one(identity.standards().all(EmergencyStopStandard.class), identity, findings),
                    robotStandard,
                    devices);
            return new Cell(
                    identity,
                    identity.robots().stream()
                            .map(robot -> new RobotLoad(robot, robotStandard))
                            .toList(),
                    stops,
                    zones.stream()
                            .map(zone ->
                                    new ZoneExtent(zone, identity.robot(zone.robot()), named(stops, zone.overrun())))
                            .toList(),
                    safeguards.stream()
                            .map(safeguard -> guarding(safeguard, zones, stops, identity, rules))
                            .toList(),
                    devices.stream()
                            .map(device -> new Complement(device, around))
                            .toList(),
                    deviations,
                    sheet,
                    sources.files());
        });
    }

    private static Guarding guarding(
            Safeguard safeguard, List<Zone> zones, List<StopEvidence> stops, Identity identity, Rules rules) {
        List<Zone> protectedZones = zones.stream()
                .filter(zone -> safeguard.protects().stream()
                        .anyMatch(tag -> tag.value().equals(zone.tag().value())))
                .toList();
        return new Guarding(
                safeguard,
                protectedZones,
                safeguard.stopTests().stream()
                        .map(tag -> named(stops, tag))
                        .flatMap(Optional::stream)
                        .toList(),
                identity.instrument(safeguard.installed().instrument()),
                rules);
    }

    private static Optional<StopEvidence> named(List<StopEvidence> stops, Stated<String> tag) {
        return stops.stream()
                .filter(stop -> stop.test().tag().value().equals(tag.value()))
                .findFirst();
    }

    private static Optional<Rules> rules(Identity identity, Findings findings) {
        Standards standards = identity.standards();
        Optional<PositioningStandard> positioning = chosen(standards, PositioningStandard.class, identity, findings);
        Optional<ReachStandard> reach = chosen(standards, ReachStandard.class, identity, findings);
        Optional<RobotCellStandard> robotCell = chosen(standards, RobotCellStandard.class, identity, findings);
        chosen(standards, RobotStandard.class, identity, findings);
        return positioning.flatMap(one -> reach.flatMap(two -> robotCell.map(three -> new Rules(one, two, three))));
    }

    private static <E extends Edition> Optional<E> chosen(
            Standards standards, Class<E> subject, Identity identity, Findings findings) {
        List<E> chosen = standards.all(subject);
        boolean allKnown = standards.chosen().size() == identity.editions().size();
        if (chosen.isEmpty() && allKnown && !identity.editions().isEmpty()) {
            findings.add(Finding.refuses(
                    NO_EDITION,
                    "",
                    identity.where(),
                    "this cell names none of the editions `" + String.join("`, `", Editions.ids(subject))
                            + "`, and its values cannot be recomputed without one",
                    "state under `standards` the edition the cell was built to"));
        }
        return one(chosen, identity, findings);
    }

    /** The edition of a subject, if one was chosen; two are refused. */
    private static <E extends Edition> Optional<E> one(List<E> chosen, Identity identity, Findings findings) {
        if (chosen.size() > 1) {
            String second = chosen.get(1).id();
            findings.add(Finding.refuses(
                    TWO_EDITIONS,
                    "",
                    identity.editions().stream()
                            .filter(edition -> edition.edition().characters().equals(second))
                            .map(edition -> edition.edition().where())
                            .findFirst()
                            .orElse(identity.where()),
                    "`" + chosen.get(0).id() + "` and `" + second
                            + "` are both named, and the values can be recomputed by one only",
                    "keep the edition the cell was built to"));
        }
        return chosen.stream().findFirst();
    }

    /** Everything with derived values, in the order it is printed. */
    public List<Recomputed> recomputed() {
        List<Recomputed> all = new ArrayList<>(robots);
        all.addAll(zones);
        for (StopEvidence stop : stops) {
            all.add(stop);
            all.addAll(stop.conditions());
        }
        all.addAll(safeguards);
        all.addAll(complementary);
        return all;
    }

    /** Every derived value by its tag, sorted. */
    public Map<String, Derived> derived() {
        return recomputed().stream()
                .flatMap(one -> one.derived().stream())
                .sorted(java.util.Comparator.comparing(Derived::tag))
                .collect(Collectors.toMap(Derived::tag, Function.identity(), (a, b) -> a, LinkedHashMap::new));
    }

    /** The thing to which a derived value belongs. */
    public Optional<Recomputed> owner(Derived derived) {
        return recomputed().stream()
                .filter(one -> one.tag().equals(derived.about()))
                .findFirst();
    }

    /** Where a sheet is described, or the cell when it is about none. */
    public Span place(String about) {
        return about.equals(AutomaticOperation.ID) ? automaticOperation.postAt().where() : identity.where();
    }

    /** What does not hold in any of its parts. */
    public List<Finding> findings() {
        return recomputed().stream().flatMap(one -> one.findings().stream()).toList();
    }
}
