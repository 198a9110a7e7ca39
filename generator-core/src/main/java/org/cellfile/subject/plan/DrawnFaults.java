package org.cellfile.subject.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.complement.EmergencyStop;
import org.cellfile.subject.complement.Reset;
import org.cellfile.subject.safeguard.Device.Footprint;
import org.cellfile.subject.safeguard.Guarding;

/** What of the cell's description is not on its plan, or not in the form it has. */
final class DrawnFaults {

    /** Something that has a place at the cell is not on the plan. */
    static final FindingId NOT_DRAWN = new FindingId("plan.not-drawn");

    private DrawnFaults() {}

    static List<Finding> of(Layout layout) {
        Plan plan = layout.plan();
        List<Finding> faults = new ArrayList<>();
        Set<String> zones = tags(plan.zones().stream().map(DrawnZone::of));
        layout.around().zones().stream()
                .map(extent -> extent.zone().tag())
                .filter(tag -> !zones.contains(tag.characters()))
                .forEach(tag -> faults.add(notDrawn(plan, tag, "hazard zone", "zones")));
        Set<String> robots = tags(plan.robots().stream().map(DrawnRobot::of));
        layout.around().robots().stream()
                .map(load -> load.robot().tag())
                .filter(tag -> !robots.contains(tag.characters()))
                .filter(tag -> layout.zonesOf(tag.characters()).stream()
                        .anyMatch(zone -> zones.contains(zone.tag().characters())))
                .forEach(tag -> faults.add(notDrawn(plan, tag, "robot", "robots")));
        Set<String> safeguards = tags(plan.safeguards().stream().map(DrawnSafeguard::of));
        layout.around().safeguards().stream()
                .map(guarding -> guarding.safeguard().tag())
                .filter(tag -> !safeguards.contains(tag.characters()))
                .forEach(tag -> faults.add(notDrawn(plan, tag, "safeguard", "safeguards")));
        Set<String> devices = tags(plan.devices().stream().map(DrawnDevice::of));
        layout.around().complementary().stream()
                .map(complement -> complement.device())
                .filter(DrawnFaults::hasPlace)
                .filter(device -> !devices.contains(device.tag().characters()))
                .forEach(device -> faults.add(notDrawn(plan, device.tag(), "device", "devices")));
        layout.around().safeguards().forEach(guarding -> forms(layout, guarding, faults));
        return faults;
    }

    private static Set<String> tags(Stream<Stated<String>> tags) {
        return tags.map(Stated::characters).collect(Collectors.toSet());
    }

    private static boolean hasPlace(ComplementaryDevice device) {
        return device.sort() instanceof Reset || (device.sort() instanceof EmergencyStop stop && !stop.handHeld());
    }

    private static Finding notDrawn(Plan plan, Stated<String> tag, String sort, String list) {
        return Finding.refuses(
                NOT_DRAWN,
                tag.characters(),
                plan.where(),
                "the " + sort + " `" + tag.characters() + "`, described at "
                        + tag.where().position() + ", is not on the plan",
                "draw it under `" + list + "` of the plan where it stands at the cell");
    }

    private static void forms(Layout layout, Guarding guarding, List<Finding> faults) {
        Footprint footprint = guarding.safeguard().device().footprint();
        for (DrawnSafeguard piece : layout.drawn(guarding.tag())) {
            piece.outline()
                    .filter(outline -> !fits(outline, footprint))
                    .ifPresent(outline -> faults.add(Finding.refuses(
                            Outline.FORM,
                            guarding.tag(),
                            outline.where(),
                            "`" + guarding.tag() + "` is drawn as " + words(footprint(outline)) + ", and "
                                    + words(footprint) + " is what it is from above",
                            help(footprint))));
        }
    }

    /** True when a thing may be drawn so; what is not was told, and counts as not drawn. */
    static boolean fits(Outline outline, Footprint footprint) {
        return footprint(outline) == footprint || (footprint == Footprint.SPOT && outline instanceof Outline.Line);
    }

    private static Footprint footprint(Outline outline) {
        return outline instanceof Outline.Spot
                ? Footprint.SPOT
                : outline instanceof Outline.Line ? Footprint.LINE : Footprint.AREA;
    }

    /** The words for the forms of such a thing. */
    static Set<String> forms(Footprint footprint) {
        return switch (footprint) {
            case LINE -> Set.of("line");
            case AREA -> Outline.AREAS;
            case SPOT -> Set.of("at", "line");
        };
    }

    private static String words(Footprint footprint) {
        return switch (footprint) {
            case LINE -> "a line";
            case AREA -> "an area of the floor";
            case SPOT -> "a single place";
        };
    }

    private static String help(Footprint footprint) {
        return switch (footprint) {
            case LINE -> "draw the line in which it detects or bars, as `line`";
            case AREA -> "draw the floor on which it detects somebody, as `outline`, `circle`, `ring` or `sector`";
            case SPOT -> "draw where its actuators are, as `at` or as a `line` from one to the other";
        };
    }
}
