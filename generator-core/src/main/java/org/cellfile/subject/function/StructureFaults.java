package org.cellfile.subject.function;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cellfile.dossier.Text;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.quantity.Unit;
import org.cellfile.source.Stated;
import org.cellfile.standard.Category;
import org.cellfile.standard.ControlStandard;
import org.cellfile.trace.Derived;

/** What a subsystem that was built from parts must have to be of its category: channels, parts, coverage. */
final class StructureFaults {

    /** It has fewer channels than its category, or more. */
    static final FindingId CHANNELS = new FindingId("subsystem.number-of-channels");

    /** One part stands in both channels, twice in one, or in a channel and in the equipment that tests it. */
    static final FindingId PART_TWICE = new FindingId("subsystem.one-part-twice");

    static final FindingId CHANNEL_SHORT = new FindingId("subsystem.channel-fails-too-soon");
    static final FindingId COVERAGE_LOW = new FindingId("subsystem.coverage-too-low");
    static final FindingId NOT_WELL_TRIED = new FindingId("subsystem.not-well-tried");

    /** Nobody has recorded what was recomputed for it. */
    static final FindingId NOT_RECORDED = new FindingId("subsystem.not-recorded");

    private static final String EQUIPMENT = "the test equipment";

    private final SubsystemLevel level;
    private final Subsystem subsystem;
    private final ControlStandard standard;
    private final Category category;
    private final HeldAgainst held;

    StructureFaults(SubsystemLevel level, Category category, HeldAgainst held) {
        this.level = level;
        this.subsystem = level.subsystem();
        this.standard = level.standard();
        this.category = category;
        this.held = held;
    }

    void hold() {
        held.rule(standard.structures());
        channels();
        partsTwice();
        Derived least = held.bound(standard.leastOfChannel(category), Rounding.down(Quantity.years("0.01")));
        for (SubsystemLevel.ChannelLife channel : level.channels()) {
            held.atLeast(
                    channel.mttfd(),
                    least,
                    CHANNEL_SHORT,
                    channel.channel().name().where(),
                    "take parts that last longer, operate them less often, or replace the channel by one of another category");
        }
        coverage();
        if (category == Category.ONE) {
            wellTried();
        }
        recorded(level.pfh());
        recorded(level.level());
    }

    private void channels() {
        int due = category.twoChannels() ? 2 : 1;
        int stated = subsystem.channels().size();
        if (stated > 2) {
            held.refuse(
                    CHANNELS,
                    subsystem.channels().get(2).name().where(),
                    "`" + held.tag() + "` has " + stated
                            + " channels, and this program holds the simplified procedure of two at the most",
                    standard.structures(),
                    "have it worked out by a procedure for that many, and state the result under `maker` with its source; or state"
                            + " the two channels alone where the function rests on two");
        } else if (stated != due) {
            held.refuse(
                    CHANNELS,
                    subsystem.channels().get(stated - 1).name().where(),
                    "`" + held.tag() + "` has " + count(stated) + ", and " + category + " has " + count(due),
                    standard.structures(),
                    "state every channel that is there, or the category that the structure has");
        }
    }

    private static String count(int channels) {
        return channels == 1 ? "one channel" : "two channels";
    }

    private void partsTwice() {
        Map<String, String> met = new HashMap<>();
        for (Subsystem.Channel channel : subsystem.channels()) {
            partsTwice(met, "channel " + channel.name().characters(), channel.parts());
        }
        subsystem.test().ifPresent(test -> partsTwice(met, EQUIPMENT, test.equipment()));
    }

    private void partsTwice(Map<String, String> met, String place, List<Stated<String>> parts) {
        for (Stated<String> part : parts) {
            String before = met.putIfAbsent(part.characters(), place);
            if (before != null) {
                held.refuse(
                        PART_TWICE,
                        part.where(),
                        "`" + part.characters() + "` stands "
                                + (before.equals(place) ? "twice in " + place : "in " + before + " and in " + place)
                                + " of `" + held.tag() + "`",
                        standard.structures(),
                        before.equals(place)
                                ? "name each part once; a second one of the same type is a part with a tag of its own"
                                : "state the part that is really there; where both do hang on this one, it belongs to a subsystem of"
                                        + " its own, of a category with one channel");
            }
        }
    }

    private void coverage() {
        level.averageCoverage()
                .ifPresent(coverage -> held.atLeast(
                        coverage,
                        held.bound(standard.leastCoverage(category), Rounding.down(Quantity.of("0.01", Unit.PERCENT))),
                        COVERAGE_LOW,
                        subsystem.category().where(),
                        "have more of the failures of its parts found, those first that fail soonest, or state the category that the"
                                + " structure has"));
    }

    private void wellTried() {
        held.rule(standard.wellTriedComponents());
        List<String> others = level.channels().stream()
                .flatMap(channel -> channel.parts().stream())
                .filter(life -> life.part().wellTried().value().isEmpty())
                .map(PartLife::tag)
                .distinct()
                .toList();
        if (!others.isEmpty()) {
            held.refuse(
                    NOT_WELL_TRIED,
                    subsystem.category().where(),
                    "`" + held.tag() + "` is of category 1, and nothing says why " + Text.tagged(others)
                            + (others.size() == 1 ? " is a well-tried component" : " are well-tried components"),
                    standard.wellTriedComponents(),
                    "say it under `well-tried` of the part, with the list or the proof it rests on; without one the category is B");
        }
    }

    private void recorded(Derived derived) {
        if (subsystem.recorded().of(derived).isEmpty() && derived.value().isPresent()) {
            held.found(Finding.barsRelease(
                    NOT_RECORDED,
                    held.tag(),
                    subsystem.recorded().where(),
                    "nobody has recorded the " + derived.words() + " of `" + held.tag() + "`",
                    "work it out by hand from the same inputs and state it as `" + derived.name()
                            + "` under `stated`; a value copied from this program proves nothing"));
        }
    }
}
