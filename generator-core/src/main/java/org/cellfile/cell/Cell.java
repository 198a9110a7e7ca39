package org.cellfile.cell;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.cellfile.claim.Recomputed;
import org.cellfile.dossier.Statement;
import org.cellfile.dossier.Substance;
import org.cellfile.finding.Deviation;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Reading;
import org.cellfile.read.Section;
import org.cellfile.source.SourceFile;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;
import org.cellfile.source.World;
import org.cellfile.standard.ControlStandard;
import org.cellfile.standard.CrushingStandard;
import org.cellfile.standard.Edition;
import org.cellfile.standard.Editions;
import org.cellfile.standard.EmergencyStopStandard;
import org.cellfile.standard.PositioningStandard;
import org.cellfile.standard.ReachStandard;
import org.cellfile.standard.RobotCellStandard;
import org.cellfile.standard.RobotStandard;
import org.cellfile.standard.Standards;
import org.cellfile.subject.clearance.Clearance;
import org.cellfile.subject.clearance.ClearanceGap;
import org.cellfile.subject.complement.Complement;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.complement.Surroundings;
import org.cellfile.subject.due.Due;
import org.cellfile.subject.due.Proofs;
import org.cellfile.subject.energy.Energies;
import org.cellfile.subject.energy.IsolationFaults;
import org.cellfile.subject.energy.Rescue;
import org.cellfile.subject.energy.RescueFaults;
import org.cellfile.subject.function.ControlSystem;
import org.cellfile.subject.function.Minimums;
import org.cellfile.subject.function.SafetyFunction;
import org.cellfile.subject.hazard.Hazard;
import org.cellfile.subject.hazard.Risk;
import org.cellfile.subject.hazard.Zone;
import org.cellfile.subject.hazard.ZoneExtent;
import org.cellfile.subject.identity.Identity;
import org.cellfile.subject.identity.Robot;
import org.cellfile.subject.identity.RobotLoad;
import org.cellfile.subject.ledger.Ledger;
import org.cellfile.subject.mode.Mode;
import org.cellfile.subject.mode.Operation;
import org.cellfile.subject.plan.Layout;
import org.cellfile.subject.plan.OperatorPlace;
import org.cellfile.subject.plan.Plan;
import org.cellfile.subject.plan.Structure;
import org.cellfile.subject.register.Registers;
import org.cellfile.subject.safeguard.Deviations;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.subject.safeguard.Safeguard;
import org.cellfile.subject.safeguard.Surroundings.Rules;
import org.cellfile.subject.sheet.PostedCell;
import org.cellfile.subject.sheet.SheetSet;
import org.cellfile.subject.sheet.SheetSorts;
import org.cellfile.subject.sheet.Sheets;
import org.cellfile.subject.signoff.Copies;
import org.cellfile.subject.signoff.SignOffs;
import org.cellfile.subject.signoff.Signing;
import org.cellfile.subject.stopping.MovedRobot;
import org.cellfile.subject.stopping.StopEvidence;
import org.cellfile.subject.stopping.StopTest;
import org.cellfile.subject.stopping.StopTrend;
import org.cellfile.subject.verification.Verification;
import org.cellfile.trace.Derived;

/** One cell: what was stated about it, and what was recomputed from that. */
public record Cell(
        Identity identity,
        List<RobotLoad> robots,
        List<StopEvidence> stops,
        List<StopTrend> trends,
        List<ZoneExtent> zones,
        List<Risk> risks,
        List<ClearanceGap> clearances,
        List<Guarding> safeguards,
        List<Complement> complementary,
        Optional<Layout> layout,
        ControlSystem controlSystem,
        List<Operation> operations,
        Registers registers,
        Verification verification,
        Optional<Energies> energies,
        Optional<Rescue> rescue,
        List<Deviation> deviations,
        Sheets sheets,
        SignOffs signOffs,
        Copies copies,
        Optional<Ledger> ledger,
        List<Statement> statements,
        List<SourceFile> sources) {

    /** The cell chose no edition of a standard that its values need. */
    public static final FindingId NO_EDITION = new FindingId("standard.not-chosen");

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
        List<Hazard> hazards = Section.each(top.listIfStated("hazards"), Hazard::read);
        List<Clearance> clearances = Section.each(top.listIfStated("clearances"), Clearance::read);
        List<Safeguard> safeguards = top.list("safeguards").stream()
                .map(Safeguard::read)
                .flatMap(Optional::stream)
                .toList();
        List<ComplementaryDevice> devices = top.listIfStated("complementary").stream()
                .map(ComplementaryDevice::read)
                .flatMap(Optional::stream)
                .toList();
        ControlSystem.Described described = ControlSystem.Described.read(top);
        List<Deviation> deviations = Deviations.read(
                top,
                identity,
                List.of(
                        Safeguard.SORT,
                        Zone.SORT,
                        Clearance.SORT,
                        ComplementaryDevice.SORT,
                        SafetyFunction.SORT,
                        Structure.SORT,
                        OperatorPlace.SORT));
        List<Mode> modes = Section.each(top.list("modes"), Mode::read);
        Registers registers = Registers.read(top);
        Verification.Records functionTests = Verification.Records.read(top);
        Optional<Energies> energies = Energies.read(top);
        Optional<Rescue> rescue = Rescue.read(top);
        Optional<Plan> plan = Plan.read(top, safeguards);
        Sheets sheets = Sheets.read(top, sources.files());
        SignOffs signOffs = SignOffs.read(top, sources.files());
        Copies copies = Copies.read(top, Substances.chapters());
        Optional<Ledger> ledger = Ledger.read(top);
        if (top.without("hazards")) {
            findings.add(noHazard(identity));
        }
        sources.finish();
        if (!everySubjectChosen(identity, findings) || !everySafeguardHasRules(safeguards, identity, findings)) {
            return Optional.empty();
        }
        return identity.standards().stopMeasurement().map(measurement -> {
            List<RobotLoad> robots = identity.robots().stream()
                    .map(robot -> new RobotLoad(robot, identity.standards().inForce(RobotStandard.class)))
                    .toList();
            List<StopEvidence> stops = tests.stream()
                    .map(test -> new StopEvidence(test, identity, measurement, moved(test, zones, robots, modes)))
                    .toList();
            List<Guarding> guardings = safeguards.stream()
                    .map(safeguard ->
                            guarding(safeguard, rules(identity.standards(), safeguard), zones, stops, identity))
                    .toList();
            Optional<CrushingStandard> crushing = crushing(
                    identity,
                    !clearances.isEmpty() || plan.filter(Plan::holdsGaps).isPresent(),
                    findings);
            Optional<ControlStandard> control = control(identity, hazards.isEmpty() && described.empty(), findings);
            List<Risk> risks =
                    hazards.stream().map(hazard -> new Risk(hazard, control)).toList();
            Surroundings around = new Surroundings(
                    identity.standards().inForce(EmergencyStopStandard.class).stream()
                            .findFirst(),
                    identity.standards().inForce(RobotStandard.class).stream().findFirst(),
                    devices);
            Minimums.Around asked =
                    new Minimums.Around(identity.standards(), !identity.robots().isEmpty(), zones, safeguards, devices);
            List<ZoneExtent> extents = zones.stream()
                    .map(zone -> new ZoneExtent(zone, identity.robot(zone.robot()), named(stops, zone.overrun())))
                    .toList();
            List<ClearanceGap> gaps = clearances.stream()
                    .map(one -> new ClearanceGap(one, crushing, identity.instrument(one.instrument())))
                    .toList();
            List<Complement> complements = devices.stream()
                    .map(device -> new Complement(device, around))
                    .toList();
            return new Cell(
                    identity,
                    robots,
                    stops,
                    stops.stream()
                            .map(stop -> trend(stop, guardings, zones, registers))
                            .toList(),
                    extents,
                    risks,
                    gaps,
                    guardings,
                    complements,
                    plan.map(drawn -> new Layout(
                            drawn,
                            new Layout.Around(
                                    robots,
                                    extents,
                                    guardings,
                                    complements,
                                    gaps,
                                    identity.standards().inForce(RobotCellStandard.class),
                                    identity.standards().inForce(ReachStandard.class),
                                    crushing))),
                    control.map(standard -> ControlSystem.of(described, standard, risks, guardings, devices, asked::of))
                            .orElseGet(() -> ControlSystem.notRecomputed(described)),
                    modes.stream()
                            .map(mode -> new Operation(mode, safeguards, devices, identity.standards()))
                            .toList(),
                    registers,
                    new Verification(functionTests, identity, safeguards, devices, described, modes, registers),
                    energies,
                    rescue,
                    deviations,
                    sheets,
                    signOffs,
                    copies,
                    ledger,
                    sources.statements(),
                    sources.files());
        });
    }

    private static Finding noHazard(Identity identity) {
        return Finding.barsRelease(
                Hazard.MISSING,
                "",
                identity.where(),
                "no hazard of this cell is described, so that nothing tells what its safeguards are for",
                "state under `hazards` who meets which hazard in which task, how it was judged, what is done against it and"
                        + " what remains");
    }

    /** The robots whose movement a stop ends, each with its speed in the mode of the test. */
    private static List<MovedRobot> moved(StopTest test, List<Zone> zones, List<RobotLoad> robots, List<Mode> modes) {
        return robots.stream()
                .filter(robot -> zones.stream()
                        .filter(zone -> zone.endedBy(test.tag().characters()))
                        .anyMatch(zone -> zone.robot().value().equals(Optional.of(robot.tag()))))
                .map(robot -> new MovedRobot(robot, speed(robot.robot(), test, modes)))
                .toList();
    }

    private static Stated<Quantity> speed(Robot robot, StopTest test, List<Mode> modes) {
        return modes.stream()
                .filter(mode -> mode.tag().value().equals(test.mode().value()))
                .findFirst()
                .map(mode -> mode.is(Mode.AUTOMATIC)
                        ? robot.automaticSpeed()
                        : mode.is(Mode.MANUAL_REDUCED_SPEED) ? robot.manualReducedSpeed() : mode.speedLimit())
                .orElseGet(() -> new Stated.Missing<>(test.mode().where(), "speed"));
    }

    private static StopTrend trend(StopEvidence stop, List<Guarding> guardings, List<Zone> zones, Registers registers) {
        Optional<LocalDate> present = stop.test().on().value();
        return new StopTrend(
                stop,
                guardings.stream()
                        .filter(guarding -> guarding.safeguard().stopTests().stream()
                                .anyMatch(tag -> tag.characters().equals(stop.tag())))
                        .map(guarding -> new StopTrend.Allowing(
                                guarding.tag(), guarding.budget().longestStop()))
                        .toList(),
                registers.changes().stream()
                        .filter(change -> change.touches(stop.tag())
                                || zones.stream()
                                        .filter(zone -> zone.endedBy(stop.tag()))
                                        .flatMap(zone -> zone.robot().value().stream())
                                        .anyMatch(change::touches))
                        .flatMap(change -> change.on().value().stream()
                                .filter(day -> present.filter(day::isAfter).isEmpty())
                                .map(day ->
                                        new StopTrend.Interruption(change.tag().characters(), day)))
                        .max(Comparator.comparing(StopTrend.Interruption::on)));
    }

    private static Guarding guarding(
            Safeguard safeguard, Rules rules, List<Zone> zones, List<StopEvidence> stops, Identity identity) {
        return new Guarding(
                safeguard,
                safeguard.tag().characters(),
                zones.stream()
                        .filter(zone -> safeguard.protects().stream()
                                .anyMatch(tag -> tag.value().equals(zone.tag().value())))
                        .toList(),
                safeguard.stopTests().stream()
                        .map(stop -> named(stops, stop))
                        .flatMap(Optional::stream)
                        .toList(),
                identity::instrument,
                rules);
    }

    /**
     * The editions in force for a safeguard. One named for it takes the place of the general one, except for reach: there the
     * farthest of all counts, because an edition may know some ways of reaching and not others.
     */
    private static Rules rules(Standards standards, Safeguard safeguard) {
        String tag = safeguard.tag().characters();
        return new Rules(
                standards.inForce(PositioningStandard.class, tag),
                standards.beside(ReachStandard.class, tag),
                standards.inForce(RobotCellStandard.class, tag));
    }

    /** True when an edition of each subject is in force for each safeguard. */
    private static boolean everySafeguardHasRules(List<Safeguard> safeguards, Identity identity, Findings findings) {
        List<Safeguard> without = safeguards.stream()
                .filter(safeguard -> !rules(identity.standards(), safeguard).complete())
                .toList();
        if (!without.isEmpty()) {
            findings.add(Finding.refuses(
                    NO_EDITION,
                    without.get(0).tag().characters(),
                    without.get(0).tag().where(),
                    "every edition of a subject is named for other safeguards only, and none is in force for `"
                            + without.stream()
                                    .map(safeguard -> safeguard.tag().characters())
                                    .collect(Collectors.joining("`, `"))
                            + "`",
                    "leave `only-for` out of one edition of each subject, or name these safeguards there too"));
        }
        return without.isEmpty();
    }

    private static Optional<StopEvidence> named(List<StopEvidence> stops, Stated<String> tag) {
        return stops.stream()
                .filter(stop -> stop.test().tag().value().equals(tag.value()))
                .findFirst();
    }

    private static boolean everySubjectChosen(Identity identity, Findings findings) {
        boolean complete = true;
        for (Class<? extends Edition> subject :
                List.of(PositioningStandard.class, ReachStandard.class, RobotCellStandard.class, RobotStandard.class)) {
            complete &= chosen(identity, subject, findings);
        }
        return complete && stopsAreMeasured(identity, findings);
    }

    /** A rule for presses alone says where a safeguard stands, but not how a stop is measured. */
    private static boolean stopsAreMeasured(Identity identity, Findings findings) {
        if (identity.standards().stopMeasurement().isPresent()) {
            return true;
        }
        String known = Editions.ids(PositioningStandard.class).stream()
                .filter(id -> Editions.of(id)
                        .map(PositioningStandard.class::cast)
                        .flatMap(PositioningStandard::stopMeasurement)
                        .isPresent())
                .collect(Collectors.joining("`, `"));
        findings.add(Finding.refuses(
                NO_EDITION,
                "",
                identity.where(),
                "none of the editions this cell puts in force tells how a stop is measured and evaluated, and no time can be"
                        + " recomputed without that",
                "put one in force that does, be it for one safeguard only (`only-for`): `" + known + "`"));
        return false;
    }

    /** Those known share one table, so that the first will do. */
    private static Optional<CrushingStandard> crushing(Identity identity, boolean needed, Findings findings) {
        if (needed) {
            chosen(identity, CrushingStandard.class, findings);
        }
        return identity.standards().inForce(CrushingStandard.class).stream().findFirst();
    }

    /** Only a cell with hazards or safety functions needs an edition about what these must reach. */
    private static Optional<ControlStandard> control(Identity identity, boolean none, Findings findings) {
        if (!none) {
            chosen(identity, ControlStandard.class, findings);
        }
        return identity.standards().inForce(ControlStandard.class).stream().findFirst();
    }

    private static boolean chosen(Identity identity, Class<? extends Edition> subject, Findings findings) {
        if (!identity.standards().inForce(subject).isEmpty()) {
            return true;
        }
        boolean allKnown =
                identity.standards().named().size() == identity.editions().size();
        if (allKnown && !identity.editions().isEmpty()) {
            findings.add(Finding.refuses(
                    NO_EDITION,
                    "",
                    identity.where(),
                    "this cell puts none of the editions `" + String.join("`, `", Editions.ids(subject))
                            + "` in force, and its values cannot be recomputed without one",
                    "state under `standards` the edition the cell was built to"));
        }
        // Without the rules for robots everything else can still be recomputed.
        return subject.equals(RobotStandard.class);
    }

    /** An edition with what the cell states about its values. */
    public Edition holding(Edition edition) {
        return identity.readInCopies().into(edition);
    }

    /** The modes as they were stated. */
    public List<Mode> modes() {
        return operations.stream().map(Operation::mode).toList();
    }

    /** Everything with derived values, in the order it is printed. */
    public List<Recomputed> recomputed() {
        List<Recomputed> all = new ArrayList<>(robots);
        all.addAll(zones);
        all.addAll(risks);
        all.addAll(clearances);
        for (StopEvidence stop : stops) {
            all.add(stop);
            all.addAll(stop.conditions());
        }
        all.addAll(trends);
        all.addAll(safeguards);
        all.addAll(complementary);
        layout.ifPresent(drawn -> all.addAll(drawn.recomputed()));
        all.addAll(controlSystem.recomputed());
        all.addAll(operations);
        return all;
    }

    /** Every derived value by its tag, sorted. */
    public Map<String, Derived> derived() {
        return recomputed().stream()
                .flatMap(one -> one.derived().stream())
                .sorted(Comparator.comparing(Derived::tag))
                .collect(Collectors.toMap(Derived::tag, Function.identity(), (a, b) -> a, LinkedHashMap::new));
    }

    /** What is signed of it, as it is now. */
    public Substance substance() {
        return Substances.of(
                        identity.facts().id().characters(),
                        statements,
                        derived().values())
                .carrying(copies.carried());
    }

    /** Its sign-offs held against that. */
    public Signing signing() {
        return new Signing(signOffs, identity, substance());
    }

    /** The pages posted at it. */
    public SheetSet posted() {
        return SheetSet.of(toPost());
    }

    /** What pages and signs posted at it may tell of. */
    public PostedCell toPost() {
        return new PostedCell(
                identity,
                zones,
                risks,
                safeguards,
                complementary.stream().map(Complement::device).toList(),
                modes(),
                registers,
                dues(),
                energies,
                rescue,
                layout,
                sheets);
    }

    /** The thing to which a derived value belongs. */
    public Optional<Recomputed> owner(Derived derived) {
        return recomputed().stream()
                .filter(one -> one.derived().contains(derived))
                .findFirst();
    }

    /** Everything that falls due on a day, the earliest first. */
    public List<Due> dues() {
        List<Due> dues = new ArrayList<>(verification.dues());
        stops.forEach(stop -> stop.due().ifPresent(dues::add));
        dues.addAll(Proofs.dues(
                identity, instrumentsUsed().stream().map(Stated::characters).collect(Collectors.toSet())));
        dues.addAll(Deviations.dues(deviations));
        dues.addAll(registers.dues(identity));
        dues.addAll(controlSystem.dues());
        energies.ifPresent(stated -> dues.addAll(stated.dues(identity)));
        dues.addAll(sheets.dues(identity));
        dues.sort(Comparator.comparing(Due::on).thenComparing(Due::tag).thenComparing(Due::what));
        return dues;
    }

    /** The instruments of all measurements, where the measurements name them. */
    public List<Stated<String>> instrumentsUsed() {
        List<Stated<String>> used = new ArrayList<>();
        clearances.forEach(gap -> used.add(gap.clearance().instrument()));
        safeguards.forEach(
                guarding -> guarding.safeguard().measured().forEach(measured -> used.add(measured.instrument())));
        stops.forEach(stop -> {
            used.add(stop.test().instrument());
            stop.test().history().forEach(earlier -> used.add(earlier.instrument()));
        });
        verification.rounds().forEach(round -> used.add(round.instrument()));
        return used;
    }

    /** Where a sheet is described, or the cell when it is about none. */
    public Span place(String about) {
        return SheetSorts.ids().stream().anyMatch(id -> about.equals(id) || about.startsWith(id + "-"))
                ? sheets.where()
                : identity.where();
    }

    /** What of it does not agree with the ledger; nothing where it has none. */
    public List<Finding> ledgerFindings() {
        return ledger.map(one -> one.held(derived())).orElseGet(List::of);
    }

    /** What does not hold in any of its parts. */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        recomputed().forEach(one -> findings.addAll(one.findings()));
        findings.addAll(verification.findings());
        findings.addAll(layout.map(Layout::findings).orElseGet(() -> List.of(Plan.missing(identity.where()))));
        findings.addAll(IsolationFaults.of(energies, identity));
        findings.addAll(RescueFaults.of(rescue, zones, identity));
        findings.addAll(posted().findings());
        findings.addAll(signing().findings());
        return findings;
    }
}
