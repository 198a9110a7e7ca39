package org.cellfile.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.claim.Claim;
import org.cellfile.finding.Finding;
import org.cellfile.finding.Findings;
import org.cellfile.finding.Severity;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.read.Reading;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.standard.Approach;
import org.cellfile.standard.Edition;
import org.cellfile.standard.Editions;
import org.cellfile.standard.PositioningStandard;
import org.cellfile.standard.ReachStandard;
import org.cellfile.standard.RobotCellStandard;
import org.cellfile.standard.Timing;
import org.cellfile.subject.safeguard.Device;
import org.cellfile.subject.safeguard.Kind;
import org.cellfile.subject.safeguard.Kinds;
import org.cellfile.subject.safeguard.Positioning;
import org.cellfile.subject.safeguard.Surroundings;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The cases of each kind of safeguard, {@code cases/<kind>.cases.yaml} and {@code cases/<kind>.<edition>.cases.yaml}: what a source states, the formula as a person reads it in
 * the standard, and the values that must come out.
 *
 * <p>A case is read by the program's own reader. Its {@code given} is what a cell states for a safeguard of that kind; {@code
 * response} are the parts of the response time; {@code derived} is compared at the digit it is printed with, {@code exact} without
 * rounding, {@code never} are values of wrong readings that must not come out.
 */
class CasesTest {

    private static final String TAG = "case";

    @TestFactory
    Stream<DynamicTest> casesOfEachKind() throws Exception {
        Path folder =
                Path.of(Objects.requireNonNull(getClass().getResource("/cases")).toURI());
        List<DynamicTest> tests = new ArrayList<>();
        for (String id : Kinds.ids()) {
            List<Path> files = files(folder, id);
            tests.add(dynamicTest(id + " has cases", () -> assertThat(files).isNotEmpty()));
            for (Path file : files) {
                tests.addAll(cases(Kinds.of(id).orElseThrow(), file));
            }
        }
        return tests.stream();
    }

    private static List<Path> files(Path folder, String kind) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(file -> file.getFileName().toString().matches(kind + "(\\.[a-z0-9-]+)?\\.cases\\.yaml"))
                    .sorted()
                    .toList();
        }
    }

    private static List<DynamicTest> cases(Kind kind, Path file) throws IOException {
        Findings reading = new Findings();
        Reading.Sources sources = AsRead.file(kind.id() + ".cases.yaml", Files.readString(file), reading);
        Section top = sources.top();
        List<DynamicTest> tests = new ArrayList<>();
        for (Section section : top.list("cases")) {
            String id = section.text("id").characters();
            tests.add(dynamicTest(kind.id() + " " + id, () -> check(kind, section, reading)));
        }
        top.close();
        // After all others: a mistyped name under `formula` or `given` would hold nothing and be noticed by nobody.
        tests.add(dynamicTest(file.getFileName() + " has no key without a meaning", () -> {
            sources.finish();
            assertThat(reading.sorted())
                    .filteredOn(finding -> finding.id().toString().equals("read.unknown-key"))
                    .extracting(Finding::sentence)
                    .isEmpty();
        }));
        return tests;
    }

    private static void check(Kind kind, Section section, Findings reading) {
        String source = section.text("source").characters();
        Section zone = section.section("zone");
        Section given = section.section("given");
        Optional<Timing> timing = section.sectionIfStated("response").map(CasesTest::timing);
        Surroundings.Rules rules = rules(section.texts("editions"));
        Device device = kind.read(given, TAG);
        List<Claim> ofTheDevice = device.requirements(TAG);
        Positioning positioning = device.position(new Surroundings(
                        rules.positioning().get(0),
                        rules,
                        new Approach(
                                TAG,
                                timing.orElse(Timing.NONE),
                                new Given("a_1", "lowest", zone.quantity("lowest", Dimension.LENGTH)),
                                new Given("a_2", "highest", zone.quantity("highest", Dimension.LENGTH)),
                                new Given("X", "installed", section.quantity("installed", Dimension.LENGTH)))))
                .orElseThrow();
        Map<String, Derived> derived = new LinkedHashMap<>();
        ofTheDevice.forEach(claim -> derived.put(claim.derived().name(), claim.derived()));
        positioning.others().forEach(one -> derived.put(one.name(), one));
        derived.put(positioning.distance().name(), positioning.distance());
        positioning.longestTime().ifPresent(one -> derived.put(one.name(), one));

        assertThat(source).as("source").isNotBlank();
        Section formulas = section.section("formula");
        derived.forEach((name, one) -> {
            Stated<String> formula = formulas.textIfStated(name);
            formula.value()
                    .ifPresent(text ->
                            assertThat(one.expression().symbols()).as(name).isEqualTo(text));
        });
        formulas.close();
        quantities(section, "derived")
                .forEach((name, value) -> assertThat(named(derived, name).roundedLike(value))
                        .as(name)
                        .contains(value));
        quantities(section, "exact")
                .forEach((name, value) ->
                        assertThat(named(derived, name).value()).as(name).contains(value));
        quantities(section, "never")
                .forEach((name, value) -> assertThat(named(derived, name).roundedLike(value))
                        .as(name)
                        .isPresent()
                        .isNotEqualTo(Optional.of(value)));
        section.textsIfStated("withheld")
                .forEach(name -> assertThat(named(derived, name.characters()).value())
                        .as(name.characters())
                        .isEmpty());
        assertThat(found(positioning, ofTheDevice))
                .as("findings")
                .containsExactlyInAnyOrderElementsOf(section.textsIfStated("findings").stream()
                        .map(Stated::characters)
                        .toList());
        zone.close();
        given.close();
        section.close();
        assertThat(reading.sorted())
                .filteredOn(finding -> finding.severity() != Severity.WARNS)
                .as("what the reader refuses in the case")
                .isEmpty();
    }

    /** The links by their names; one named {@code device} is the device's own, {@code brake-monitor} no link but its setting. */
    private static Timing timing(Section response) {
        List<Term> parts = new ArrayList<>();
        List<Term> device = new ArrayList<>();
        List<Term> machine = new ArrayList<>();
        List<Term> monitor = new ArrayList<>();
        response.quantities().forEach((name, time) -> {
            if (name.equals("brake-monitor")) {
                monitor.add(new Given("T_a", name, time));
            } else {
                Given link = new Given("t_" + (parts.size() + 1), name, time);
                parts.add(link);
                (name.equals("device") ? device : machine).add(link);
            }
        });
        Derived overall = new Derived(
                TAG,
                "response-time",
                "overall response time",
                "T",
                "sum",
                new Sum(parts),
                Rounding.up(Quantity.seconds("0.001")));
        return new Timing(overall, device, machine, monitor.stream().findFirst());
    }

    /** The editions of the case; for the subjects it does not name, those that a cell of that time would choose. */
    private static Surroundings.Rules rules(List<Stated<String>> editions) {
        List<Edition> chosen = editions.stream()
                .map(edition -> Editions.of(edition.characters()).orElseThrow())
                .toList();
        return new Surroundings.Rules(
                chosen(chosen, PositioningStandard.class, "ISO 13855:2010"),
                chosen(chosen, ReachStandard.class, "ISO 13857:2008"),
                chosen(chosen, RobotCellStandard.class, "ISO 10218-2:2011"));
    }

    private static <E extends Edition> List<E> chosen(List<Edition> chosen, Class<E> subject, String usual) {
        List<E> named =
                chosen.stream().filter(subject::isInstance).map(subject::cast).toList();
        return named.isEmpty() ? List.of(subject.cast(Editions.of(usual).orElseThrow())) : named;
    }

    private static Map<String, Quantity> quantities(Section section, String key) {
        Map<String, Quantity> quantities = new LinkedHashMap<>();
        section.sectionIfStated(key)
                .map(Section::quantities)
                .orElseGet(Map::of)
                .forEach((name, stated) -> quantities.put(name, stated.value().orElseThrow()));
        return quantities;
    }

    private static Derived named(Map<String, Derived> derived, String name) {
        assertThat(derived).containsKey(name);
        return Objects.requireNonNull(derived.get(name));
    }

    /** What the position is refused or warned for, besides the installed distance. */
    private static List<String> found(Positioning positioning, List<Claim> ofTheDevice) {
        return Stream.concat(
                        positioning.faults().stream(),
                        Stream.concat(ofTheDevice.stream(), positioning.requirements().stream())
                                .map(Claim::finding)
                                .flatMap(Optional::stream))
                .map(Finding::id)
                .map(Object::toString)
                .toList();
    }
}
