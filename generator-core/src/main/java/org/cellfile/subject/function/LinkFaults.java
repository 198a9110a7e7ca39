package org.cellfile.subject.function;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Nearest;
import org.cellfile.source.Stated;
import org.cellfile.subject.function.SafetyFunction.Element;
import org.cellfile.subject.safeguard.Guarding;
import org.cellfile.subject.safeguard.Safeguard;

/**
 * The links of the response time, whose sum is the T of the distances, and the chain of the function that is said to carry them. The
 * time of a link is stated once, in the safeguard; here each link is only named, by the one element that takes that time.
 */
final class LinkFaults {

    /** What sets it off has no response time. */
    static final FindingId NO_RESPONSE_TIME = new FindingId("function.no-response-time");

    /** No trigger has a link of that name. */
    static final FindingId UNKNOWN = new FindingId("function.unknown-link");

    static final FindingId TWICE = new FindingId("function.link-twice");

    /** Nothing in the chain takes the time of a link. */
    static final FindingId NOT_CARRIED = new FindingId("function.link-not-carried");

    static final FindingId ORDER = new FindingId("function.link-order");

    /** What sets it off stands in the way by itself. */
    static final FindingId SETS_NOTHING_OFF = new FindingId("function.trigger-stops-nothing");

    /** A link that an element carries. */
    private record Carried(Element element, Stated<String> link) {
        String name() {
            return link.characters();
        }
    }

    private final SafetyFunction function;
    private final String tag;
    private final FunctionLevel.Triggers triggers;
    private final List<Carried> carried;

    LinkFaults(SafetyFunction function, FunctionLevel.Triggers triggers) {
        this.function = function;
        this.tag = function.tag().characters();
        this.triggers = triggers;
        this.carried = function.chain().stream()
                .flatMap(element -> element.links().stream().map(link -> new Carried(element, link)))
                .toList();
    }

    List<Finding> found() {
        List<Finding> fixedGuards = fixedGuards();
        if (!fixedGuards.isEmpty()) {
            return fixedGuards;
        }
        if (function.triggeredBy().isEmpty() || function.chain().isEmpty()) {
            return List.of();
        }
        List<Finding> found = new ArrayList<>();
        if (everyTriggerRead()) {
            found.addAll(unknown());
        }
        found.addAll(twice());
        // A mistyped or repeated name is the cause of what would be missing or out of order.
        if (found.isEmpty()) {
            triggers.safeguards().stream().filter(LinkFaults::read).forEach(trigger -> found.addAll(held(trigger)));
        }
        return found;
    }

    private List<Finding> fixedGuards() {
        return function.triggeredBy().stream()
                .filter(trigger -> triggers.safeguards().stream()
                        .filter(one -> !one.safeguard().kind().stopsTheHazard())
                        .anyMatch(one -> one.tag().equals(trigger.characters())))
                .map(trigger -> Finding.refuses(
                        SETS_NOTHING_OFF,
                        tag,
                        trigger.where(),
                        "`" + tag + "` is triggered by `" + trigger.characters()
                                + "`, which stands in the way by itself and triggers nothing",
                        "name what sets the function off; a fixed guard has none"))
                .toList();
    }

    private boolean everyTriggerRead() {
        return triggers.safeguards().size() + triggers.devices().size()
                        == function.triggeredBy().size()
                && triggers.safeguards().stream().allMatch(LinkFaults::read);
    }

    private static boolean read(Guarding trigger) {
        return trigger.safeguard().links().stream()
                .allMatch(link -> link.name().value().isPresent());
    }

    private static List<String> links(Guarding trigger) {
        return trigger.safeguard().links().stream()
                .map(Safeguard.Link::name)
                .map(Stated::characters)
                .distinct()
                .toList();
    }

    private List<Finding> unknown() {
        Set<String> known = new TreeSet<>();
        triggers.safeguards().forEach(trigger -> known.addAll(links(trigger)));
        List<Carried> unknown =
                carried.stream().filter(one -> !known.contains(one.name())).toList();
        if (known.isEmpty()) {
            return unknown.stream()
                    .limit(1)
                    .map(
                            one -> Finding.refuses(
                                    NO_RESPONSE_TIME,
                                    tag,
                                    one.link().where(),
                                    "`" + one.element().subsystem().characters() + "` carries the link `" + one.name()
                                            + "`, and what" + " triggers `" + tag + "` has no response time",
                                    "take `links` out; a device that complements the safeguards stands at no distance that a time decides"))
                    .toList();
        }
        return unknown.stream()
                .map(one -> Finding.refuses(
                        UNKNOWN,
                        tag,
                        one.link().where(),
                        "`" + one.element().subsystem().characters() + "` carries the link `" + one.name()
                                + "`, which the response time of nothing that triggers `" + tag + "` has",
                        "name it as under `response` of the safeguard: " + Nearest.listed(one.name(), known)))
                .toList();
    }

    private List<Finding> twice() {
        List<Finding> found = new ArrayList<>();
        Map<String, Carried> first = new HashMap<>();
        for (Carried one : carried) {
            Carried before = first.putIfAbsent(one.name(), one);
            if (before != null) {
                found.add(Finding.refuses(
                                TWICE,
                                tag,
                                one.link().where(),
                                "the link `" + one.name() + "` is carried twice in the chain of `" + tag + "`",
                                "name it at the one subsystem that takes this time; where two take a part each, make two links of it"
                                        + " in the safeguard")
                        .because(List.of("the first time by `"
                                + before.element().subsystem().characters() + "`, "
                                + before.link().where().position())));
            }
        }
        return found;
    }

    private List<Finding> held(Guarding trigger) {
        List<String> due = links(trigger);
        List<Carried> here =
                carried.stream().filter(one -> due.contains(one.name())).toList();
        List<String> named = here.stream().map(Carried::name).toList();
        List<String> missing =
                due.stream().filter(link -> !named.contains(link)).toList();
        if (!missing.isEmpty()) {
            return List.of(notCarried(trigger, missing));
        }
        for (int i = 0; i < due.size(); i++) {
            if (!due.get(i).equals(named.get(i))) {
                return List.of(outOfOrder(trigger, here.get(i), due.get(i)));
            }
        }
        return List.of();
    }

    private Finding notCarried(Guarding trigger, List<String> missing) {
        return Finding.refuses(
                        NOT_CARRIED,
                        tag,
                        function.tag().where(),
                        "no subsystem in the chain of `" + tag + "` carries `" + String.join("`, `", missing)
                                + "`, of which the response time of `" + trigger.tag() + "` is made",
                        "name each link under `links` of the subsystem that takes this time, and list that subsystem if it is not in"
                                + " the chain")
                .because(where(trigger, missing));
    }

    private Finding outOfOrder(Guarding trigger, Carried at, String due) {
        return Finding.refuses(
                        ORDER,
                        tag,
                        at.link().where(),
                        "in the chain of `" + tag + "` the signal passes `" + at.name() + "` before `" + due
                                + "`, in the response time of `" + trigger.tag() + "` after it",
                        "see at the wiring which of them comes first, and correct the other")
                .because(where(trigger, List.of(due, at.name())));
    }

    private static List<String> where(Guarding trigger, List<String> links) {
        return trigger.safeguard().links().stream()
                .filter(link -> links.contains(link.name().characters()))
                .map(link -> "`" + link.name().characters() + "`, "
                        + link.time().characters() + ": " + link.name().where().position())
                .toList();
    }
}
