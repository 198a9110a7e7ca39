package org.cellfile.compare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cellfile.compare.Consequence.Item;
import org.cellfile.subject.register.Change;
import org.cellfile.subject.register.Configuration;
import org.cellfile.subject.safeguard.Safeguard;
import org.cellfile.subject.stopping.StopEvidence;

/** What was done about a change in the newer state: measured again, tested again, read again, or nothing. */
final class Answers {

    /** Before what is said of a thing that was not done, or not since. */
    static final String OPEN = "open, ";

    private final State older;
    private final State newer;
    private final List<Difference> all;
    private final List<Change> recorded;
    private final List<SheetChange> sheets;

    /**
     * @param all everything that differs
     * @param recorded changes that only the newer state records
     */
    Answers(State older, State newer, List<Difference> all, List<Change> recorded, List<SheetChange> sheets) {
        this.older = older;
        this.newer = newer;
        this.all = all;
        this.recorded = recorded;
        this.sheets = sheets;
    }

    /** What a kind of change asks, row by row, and what was done of it. */
    List<Consequence> to(KindOfChange kind, Concerned concerned, Concerned before, List<ValueChange> values, int same) {
        List<Consequence> consequences = new ArrayList<>();
        Optional<LocalDate> since = since(concerned);
        for (Proof proof : Proof.values()) {
            Optional.ofNullable(kind.asks().get(proof))
                    .ifPresent(asks -> consequences.add(new Consequence(
                            proof,
                            asks,
                            switch (proof) {
                                case STOP_TIME -> stops(concerned, before, since);
                                case DISTANCE -> values(values, same);
                                case INSTALLED -> installed(kind, concerned, since);
                                case FUNCTION_TESTS -> tests(concerned.tested(kind.tests()), since);
                                case CHECKSUM -> checksums(concerned, since);
                                case RISK -> risk();
                                case SHEET -> sheets();
                            })));
        }
        return consequences;
    }

    /** The latest day of the changes recorded of the things concerned. */
    private Optional<LocalDate> since(Concerned concerned) {
        return recorded.stream()
                .filter(change -> concerned.things().stream().anyMatch(change::touches))
                .flatMap(change -> change.on().value().stream())
                .max(Comparator.naturalOrder());
    }

    /** True when something was done after it had been done for the older state, and not before the change. */
    private static boolean again(Optional<LocalDate> before, Optional<LocalDate> now, Optional<LocalDate> since) {
        return now.filter(day -> before.filter(earlier -> !day.isAfter(earlier)).isEmpty())
                .filter(day -> since.filter(day::isBefore).isEmpty())
                .isPresent();
    }

    private static Item item(
            String about,
            String done,
            Optional<LocalDate> before,
            Optional<LocalDate> now,
            Optional<LocalDate> since,
            String more) {
        boolean again = again(before, now, since);
        return new Item(
                about,
                again
                        ? done + (before.isPresent() ? " again on " : " on ") + now.orElseThrow() + more
                        : OPEN + now.map(day -> done + " last on " + day).orElse("never " + done),
                !again);
    }

    private List<Item> stops(Concerned concerned, Concerned before, Optional<LocalDate> since) {
        Set<String> stops = concerned.stops();
        stops.addAll(before.stops());
        return newer.cell().stops().stream()
                .filter(stop -> stops.contains(stop.tag()))
                .map(stop -> item(
                        stop.tag(),
                        "measured",
                        older.cell().stops().stream()
                                .filter(was -> was.tag().equals(stop.tag()))
                                .findFirst()
                                .flatMap(Answers::measured),
                        measured(stop),
                        since,
                        ""))
                .toList();
    }

    private static Optional<LocalDate> measured(StopEvidence stop) {
        return stop.test().on().value();
    }

    /** How a derived value differs. */
    static Item value(ValueChange value) {
        return new Item(
                value.tag(),
                value.newer().isEmpty()
                        ? "was " + value.older() + " and is not derived any more"
                        : (value.older().isEmpty() ? "new" : value.older()) + " → " + value.newer(),
                false);
    }

    private static List<Item> values(List<ValueChange> values, int same) {
        List<Item> items = new ArrayList<>();
        values.forEach(value -> items.add(value(value)));
        if (values.isEmpty() && same == 0) {
            items.add(new Item("", "no derived value rests on what differs", false));
        }
        if (same > 0) {
            items.add(new Item(
                    "",
                    (same == 1 ? "1 more value rests" : same + " more values rest")
                            + " on what differs and came out the same",
                    false));
        }
        return items;
    }

    private List<Item> installed(KindOfChange kind, Concerned concerned, Optional<LocalDate> since) {
        List<Item> items = new ArrayList<>();
        for (Safeguard one :
                kind.tests() == KindOfChange.Tests.OF_THE_THING ? concerned.standing() : concerned.safeguards()) {
            String tag = one.tag().characters();
            items.add(item(
                    tag,
                    "measured",
                    older.cell().safeguards().stream()
                            .filter(was -> was.tag().equals(tag))
                            .findFirst()
                            .flatMap(was -> measured(was.safeguard())),
                    measured(one),
                    since,
                    ""));
        }
        newer.cell().clearances().stream()
                .filter(gap -> concerned.things().contains(gap.tag()))
                .forEach(gap -> items.add(item(
                        gap.tag(),
                        "measured",
                        older.cell().clearances().stream()
                                .filter(was -> was.tag().equals(gap.tag()))
                                .findFirst()
                                .flatMap(was -> was.clearance().on().value()),
                        gap.clearance().on().value(),
                        since,
                        "")));
        return items;
    }

    /** The earliest day on which a distance of it was measured. */
    private static Optional<LocalDate> measured(Safeguard safeguard) {
        return safeguard.measured().stream()
                .flatMap(installed -> installed.on().value().stream())
                .min(Comparator.naturalOrder());
    }

    private List<Item> tests(Set<String> things, Optional<LocalDate> since) {
        return things.stream()
                .map(thing -> item(
                        thing,
                        "tested",
                        older.cell().verification().latestPass(thing),
                        newer.cell().verification().passedSince(thing),
                        since,
                        ""))
                .toList();
    }

    private List<Item> checksums(Concerned concerned, Optional<LocalDate> since) {
        List<Item> items = new ArrayList<>();
        for (Configuration one : concerned.configurations()) {
            String tag = one.tag().characters();
            items.add(item(
                    tag,
                    "read",
                    older.cell().registers().configurations().stream()
                            .filter(was -> was.tag().characters().equals(tag))
                            .findFirst()
                            .flatMap(was -> was.installed().on().value()),
                    one.installed().on().value(),
                    since,
                    ", " + one.installed().value().characters()));
        }
        concerned
                .withoutConfiguration()
                .forEach(thing -> items.add(new Item(thing, OPEN + "no configuration of it is recorded", true)));
        return items;
    }

    private List<Item> risk() {
        long differ = all.stream().filter(one -> one.key().equals("hazards")).count();
        return List.of(new Item(
                "",
                differ == 0
                        ? OPEN + "nothing under `hazards` differs"
                        : differ + (differ == 1 ? " place" : " places") + " under `hazards` differ",
                differ == 0));
    }

    private List<Item> sheets() {
        return sheets.isEmpty()
                ? List.of(new Item("", "every sheet prints the same", false))
                : sheets.stream()
                        .map(sheet -> new Item(sheet.id(), "differs in: " + String.join("; ", sheet.parts()), true))
                        .toList();
    }
}
