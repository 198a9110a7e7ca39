package org.cellfile.subject.identity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cellfile.claim.Workings;
import org.cellfile.dossier.Block;
import org.cellfile.dossier.Block.Column;
import org.cellfile.dossier.Block.Fact;
import org.cellfile.dossier.Block.Facts;
import org.cellfile.dossier.Block.Paragraph;
import org.cellfile.dossier.Block.Points;
import org.cellfile.dossier.Block.Section;
import org.cellfile.dossier.Block.Table;
import org.cellfile.dossier.Chapter;
import org.cellfile.dossier.Label;
import org.cellfile.source.Stated;
import org.cellfile.standard.Edition;
import org.cellfile.standard.Editions;

/** How the cell as a whole is printed. */
public final class IdentityChapter {

    private IdentityChapter() {}

    /** What every page says. */
    public static Label label(CellFacts facts) {
        return new Label(
                facts.id().characters(),
                facts.name().characters(),
                facts.site().characters(),
                facts.operator().characters(),
                facts.integrator().characters(),
                facts.revision().characters(),
                facts.asOf().characters(),
                facts.page().value().orElse("A4"));
    }

    public static Chapter identity(Identity identity, List<RobotLoad> loads) {
        CellFacts facts = identity.facts();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Facts(List.of(
                new Fact("Cell", facts.name().characters()),
                new Fact("Short name", facts.id().characters()),
                new Fact("Site", facts.site().characters()),
                new Fact("Run by", facts.operator().characters()),
                new Fact("Built by", facts.integrator().characters()),
                new Fact("Revision", facts.revision().characters()),
                new Fact("Described as of", facts.asOf().characters()),
                new Fact("Emergency telephone", facts.emergencyPhone().characters()))));
        blocks.add(section("Intended use", new Paragraph(facts.intendedUse().characters())));
        blocks.add(section(
                "Limits of use",
                new Points(facts.limits().stream().map(Stated::characters).toList())));
        loads.forEach(load -> blocks.add(robot(load, identity.facts().workings())));
        blocks.add(section("People", people(identity.people())));
        blocks.add(section("Measuring instruments", instruments(identity.instruments())));
        List<Block> standards = new ArrayList<>(List.of(editions(identity.editions())));
        standards.addAll(remarks(identity.editions()));
        blocks.add(new Section("", "Standards by edition", standards));
        return new Chapter("identity", "Identity and limits", blocks);
    }

    private static Section section(String title, Block block) {
        return new Section("", title, List.of(block));
    }

    private static Section robot(RobotLoad load, Workings workings) {
        Robot robot = load.robot();
        Facts facts = new Facts(List.of(
                new Fact(
                        "Robot",
                        robot.name().characters(),
                        "serial " + robot.serial().characters()),
                new Fact("Reach", robot.reach().characters(), "of the wrist, from the base axis"),
                new Fact("Payload", robot.payload().characters()),
                new Fact("Tool", carried(robot.tool())),
                new Fact("Part", carried(robot.part())),
                new Fact(
                        "Controller",
                        robot.controller().name().characters(),
                        "serial " + robot.controller().serial().characters()),
                new Fact("Software", robot.controller().software().characters()),
                new Fact(
                        "Safety checksum",
                        robot.controller().checksum().characters(),
                        "compare with the controller's screen"),
                new Fact("Speed in automatic", robot.automaticSpeed().characters()),
                new Fact("Manual reduced speed", robot.manualReducedSpeed().characters(), "at the tool centre point")));
        List<Block> blocks = new ArrayList<>(List.of(facts));
        load.derived().forEach(derived -> blocks.add(workings.of(derived, load.recorded())));
        blocks.addAll(Workings.remarks(load.derived()));
        return new Section(load.tag(), "Robot", blocks);
    }

    private static String carried(Robot.Carried carried) {
        return carried.name().characters() + ", " + carried.mass().characters() + ", extends the reach by "
                + carried.length().characters();
    }

    private static Table people(List<Person> people) {
        return new Table(
                "Named people, their roles and what qualifies them",
                List.of(
                        Column.text("Name", 3),
                        Column.text("Employer", 3),
                        Column.text("Roles", 3),
                        Column.text("Competence", 5),
                        Column.text("Holds", 3)),
                people.stream()
                        .map(person -> List.of(
                                person.name().characters(),
                                person.employer().characters(),
                                joined(person.roles()),
                                person.competence().characters(),
                                person.holds().isEmpty() ? "–" : joined(person.holds())))
                        .toList());
    }

    private static Table instruments(List<Instrument> instruments) {
        return new Table(
                "Instruments and their calibration",
                List.of(
                        Column.text("Tag", 3),
                        Column.text("Instrument", 4),
                        Column.text("Serial", 3),
                        Column.figures("Resolution", 2),
                        Column.text("Certificate", 3),
                        Column.text("Calibrated", 2),
                        Column.text("Due", 2)),
                instruments.stream()
                        .map(instrument -> List.of(
                                instrument.tag().characters(),
                                instrument.name().characters(),
                                instrument.serial().characters(),
                                instrument.resolution().characters(),
                                instrument.calibration().certificate().characters(),
                                instrument.calibration().calibrated().characters(),
                                instrument.calibration().due().characters()))
                        .toList());
    }

    private static Table editions(List<ChosenEdition> editions) {
        return new Table(
                "Editions this cell was recomputed by",
                List.of(
                        Column.text("Edition", 3),
                        Column.text("Title", 6),
                        Column.text("Applied to", 5),
                        Column.text("Use", 4)),
                editions.stream()
                        .map(edition -> List.of(
                                edition.edition().characters(),
                                title(edition.edition().characters()),
                                edition.appliedTo().characters(),
                                use(edition)))
                        .toList());
    }

    private static List<Paragraph> remarks(List<ChosenEdition> editions) {
        return editions.stream()
                .map(chosen -> Editions.of(chosen.edition().characters()))
                .flatMap(Optional::stream)
                .flatMap(
                        edition -> edition.remark().stream().map(remark -> new Paragraph(edition.id() + ": " + remark)))
                .toList();
    }

    private static String use(ChosenEdition edition) {
        String use = edition.inForce() ? "in force" : "for comparison only";
        String which = edition.onlyFor().isEmpty()
                ? ""
                : " for " + edition.onlyFor().stream().map(Stated::characters).collect(Collectors.joining(", "));
        String law = edition.pinnedBy().value().map(text -> "; " + text).orElse("");
        return use + which + law;
    }

    private static String title(String id) {
        Optional<Edition> known = Editions.of(id);
        return known.map(Edition::title).orElse("");
    }

    /** The list of revisions. */
    public static Chapter revisions(Identity identity) {
        Table table = new Table(
                "Revisions of this description",
                List.of(
                        Column.text("Revision", 2),
                        Column.text("Date", 2),
                        Column.text("By", 3),
                        Column.text("Change", 8)),
                identity.revisions().stream()
                        .map(revision -> List.of(
                                revision.revision().characters(),
                                revision.on().characters(),
                                identity.nameOf(revision.by()),
                                revision.change().characters()))
                        .toList());
        return new Chapter("revisions", "Revisions", List.of(table));
    }

    private static String joined(List<Stated<String>> texts) {
        return texts.stream().map(Stated::characters).collect(Collectors.joining(", "));
    }
}
