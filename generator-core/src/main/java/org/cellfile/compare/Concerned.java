package org.cellfile.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.cellfile.cell.Cell;
import org.cellfile.dossier.Statement;
import org.cellfile.source.Stated;
import org.cellfile.subject.hazard.Zone;
import org.cellfile.subject.register.Configuration;
import org.cellfile.subject.safeguard.Safeguard;

/**
 * The things of a cell that a difference concerns, and what hangs on them.
 *
 * @param things tags of what was changed itself
 */
record Concerned(Cell cell, Set<String> things) {

    /** What some differences are about. What is stated of the cell as a whole, or of a standard, is about everything that guards. */
    static Concerned by(List<Difference> differences, Cell cell) {
        Set<String> things = new LinkedHashSet<>();
        for (Difference difference : differences) {
            things.addAll(things(difference, cell));
        }
        return new Concerned(cell, things);
    }

    private static Set<String> things(Difference difference, Cell cell) {
        return switch (difference.key()) {
            case "standards", "copy-values", "confirmations", "cell" -> everything(cell);
            case "modes" -> tags(cell.identity().robots().stream().map(robot -> robot.tag()));
            case "clearances" -> Set.of(difference.label());
            default -> named(difference, cell);
        };
    }

    /** The thing it is stated of, and for a configuration, a clearance or a table the one it belongs to, which a change may name. */
    static Set<String> named(Difference difference, Cell cell) {
        Set<String> named = new LinkedHashSet<>();
        named.add(difference.label());
        switch (difference.key()) {
            case "configurations" ->
                configurations(cell, difference.label())
                        .forEach(one -> one.of().value().ifPresent(named::add));
            case "clearances" ->
                cell.clearances().stream()
                        .filter(gap -> gap.tag().equals(difference.label()))
                        .forEach(gap -> gap.clearance().zone().value().ifPresent(named::add));
            case "plan" -> {
                String[] steps = difference.path().split("/", -1);
                if (steps.length > 2) {
                    // Further pieces of one thing are numbered.
                    named.add(steps[2].replaceFirst(" \\(\\d+\\)$", ""));
                }
            }
            case "table" ->
                cell.statements().stream()
                        .filter(one -> one.path().endsWith("/runs-file")
                                && Statement.step(one.shown()).equals(difference.label()))
                        .forEach(one -> named.add(one.path().split("/", -1)[1]));
            default -> {
                // Everything else is stated of the thing itself.
            }
        }
        return named;
    }

    private static Stream<Configuration> configurations(Cell cell, String tag) {
        return cell.registers().configurations().stream()
                .filter(one -> one.tag().characters().equals(tag));
    }

    private static Set<String> everything(Cell cell) {
        return tags(Stream.of(
                        cell.identity().robots().stream().map(robot -> robot.tag()),
                        cell.zones().stream().map(zone -> zone.zone().tag()),
                        cell.safeguards().stream().map(one -> one.safeguard().tag()))
                .flatMap(each -> each));
    }

    private static Set<String> tags(Stream<Stated<String>> tags) {
        Set<String> found = new LinkedHashSet<>();
        tags.flatMap(tag -> tag.value().stream()).forEach(found::add);
        return found;
    }

    private boolean names(Stated<String> tag) {
        return tag.value().filter(things::contains).isPresent();
    }

    /** What triggers the functions that go through one of the things. */
    private Set<String> triggers() {
        Set<String> triggers = new LinkedHashSet<>();
        things.forEach(thing -> triggers.addAll(cell.controlSystem().described().triggers(thing)));
        return triggers;
    }

    /** The hazard zones concerned: themselves, or because of the robot that moves in them. */
    private List<Zone> zones() {
        return cell.zones().stream()
                .map(extent -> extent.zone())
                .filter(zone -> names(zone.tag()) || names(zone.robot()))
                .toList();
    }

    /** Stop tests that end a movement concerned, or that a safeguard concerned triggers. */
    Set<String> stops() {
        Set<String> triggers = triggers();
        Set<String> stops = new LinkedHashSet<>();
        cell.stops().stream().filter(stop -> things.contains(stop.tag())).forEach(stop -> stops.add(stop.tag()));
        zones().forEach(zone ->
                cell.stops().stream().filter(stop -> zone.endedBy(stop.tag())).forEach(stop -> stops.add(stop.tag())));
        cell.safeguards().stream()
                .map(guarding -> guarding.safeguard())
                .filter(one -> names(one.tag()) || triggers.contains(one.tag().characters()))
                .forEach(one -> stops.addAll(tags(one.stopTests().stream())));
        return stops;
    }

    /** Safeguards that are concerned themselves, or because of the zone they protect. */
    List<Safeguard> standing() {
        Set<String> zones = tags(zones().stream().map(Zone::tag));
        return cell.safeguards().stream()
                .map(guarding -> guarding.safeguard())
                .filter(one ->
                        names(one.tag()) || one.protects().stream().anyMatch(zone -> zones.contains(zone.characters())))
                .toList();
    }

    /** The same, and those that wait for a stop concerned. */
    List<Safeguard> safeguards() {
        Set<String> zones = tags(zones().stream().map(Zone::tag));
        Set<String> stops = stops();
        Set<String> triggers = triggers();
        return cell.safeguards().stream()
                .map(guarding -> guarding.safeguard())
                .filter(one -> names(one.tag())
                        || triggers.contains(one.tag().characters())
                        || one.protects().stream().anyMatch(zone -> zones.contains(zone.characters()))
                        || one.stopTests().stream().anyMatch(stop -> stops.contains(stop.characters())))
                .toList();
    }

    /** What has to be tested again. */
    Set<String> tested(KindOfChange.Tests which) {
        Set<String> all = new LinkedHashSet<>();
        cell.verification().things().forEach(thing -> all.add(thing.tag().characters()));
        if (which == KindOfChange.Tests.ALL) {
            return all;
        }
        Set<String> wanted = new LinkedHashSet<>(things);
        wanted.addAll(triggers());
        if (which == KindOfChange.Tests.OF_THE_THING) {
            cell.stops().stream()
                    .filter(stop -> things.contains(stop.tag()))
                    .flatMap(stop -> robotsEndedBy(stop.tag()).stream())
                    .forEach(wanted::add);
        } else {
            Set<String> stops = stops();
            cell.safeguards().stream()
                    .map(guarding -> guarding.safeguard())
                    .filter(one -> one.stopTests().stream().anyMatch(stop -> stops.contains(stop.characters())))
                    .forEach(one -> wanted.add(one.tag().characters()));
        }
        all.retainAll(wanted);
        return all;
    }

    private Set<String> robotsEndedBy(String stop) {
        return tags(cell.zones().stream()
                .map(extent -> extent.zone())
                .filter(zone -> zone.endedBy(stop))
                .map(Zone::robot));
    }

    /** The configurations of what is concerned; those of devices that have no tag are concerned where they are changed themselves. */
    List<Configuration> configurations() {
        Set<String> of = new LinkedHashSet<>(things);
        things.forEach(stop -> of.addAll(robotsEndedBy(stop)));
        boolean control = things.stream().anyMatch(this::ofTheControlSystem);
        return cell.registers().configurations().stream()
                .filter(one -> of.contains(one.tag().characters())
                        || one.of().value().filter(of::contains).isPresent()
                        || (control && one.of().value().isEmpty()))
                .toList();
    }

    private boolean ofTheControlSystem(String thing) {
        return !cell.controlSystem().described().triggers(thing).isEmpty();
    }

    /** What is configured and of which no configuration is recorded. */
    List<String> withoutConfiguration() {
        List<String> without = new ArrayList<>();
        for (String thing : things) {
            boolean configured = cell.identity().robots().stream()
                            .anyMatch(robot -> robot.tag().characters().equals(thing))
                    || cell.safeguards().stream()
                            .anyMatch(one -> one.tag().equals(thing)
                                    && one.safeguard().kind().configured());
            Optional<Configuration> recorded = cell.registers().configurations().stream()
                    .filter(one -> one.isOf(thing))
                    .findFirst();
            if (configured && recorded.isEmpty()) {
                without.add(thing);
            }
        }
        return without;
    }
}
