package org.cellfile.subject.function;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cellfile.calculation.DangerousFailure;
import org.cellfile.claim.Claim;
import org.cellfile.claim.Recomputed;
import org.cellfile.claim.Recorded;
import org.cellfile.finding.Finding;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Rounding;
import org.cellfile.quantity.Unit;
import org.cellfile.source.Stated;
import org.cellfile.standard.Category;
import org.cellfile.standard.ControlStandard;
import org.cellfile.subject.due.Due;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Given;
import org.cellfile.trace.Least;
import org.cellfile.trace.Quotient;
import org.cellfile.trace.Reference;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;
import org.cellfile.trace.Withheld;

/** A subsystem with its frequency of dangerous failure and the performance level it reaches. */
public final class SubsystemLevel implements Recomputed {

    private static final int DIGITS = 3;

    /**
     * A channel with its parts, where they are described.
     *
     * @param mttfd of the channel, as it counts
     */
    public record ChannelLife(Subsystem.Channel channel, List<PartLife> parts, Derived mttfd) {}

    private final Subsystem subsystem;
    private final ControlStandard standard;
    private final List<ChannelLife> channels = new ArrayList<>();
    private final List<PartLife> equipment;
    private final List<Derived> derived = new ArrayList<>();
    private final Optional<Derived> mttfd;
    private final Optional<Derived> coverage;
    private final Optional<Derived> score;
    private final Optional<Derived> testInterval;
    private final Optional<Derived> ofEquipment;
    private final Derived pfh;
    private final Derived level;
    private final Optional<Derived> replaceAfter;

    /**
     * @param parts by tag; a part that is described nowhere has been reported
     */
    public SubsystemLevel(
            Subsystem subsystem, Function<Stated<String>, Optional<PartLife>> parts, ControlStandard standard) {
        this.subsystem = subsystem;
        this.standard = standard;
        for (Subsystem.Channel channel : subsystem.channels()) {
            channels.add(channel(
                    channel,
                    channel.parts().stream()
                            .map(parts)
                            .flatMap(Optional::stream)
                            .toList()));
        }
        this.equipment = subsystem.test().stream()
                .flatMap(test -> test.equipment().stream())
                .map(parts)
                .flatMap(Optional::stream)
                .toList();
        this.mttfd = keep(mttfd());
        this.ofEquipment = keep(ofEquipment());
        this.coverage = keep(coverage());
        this.score = keep(score());
        this.testInterval = keep(subsystem
                .test()
                .filter(test -> subsystem.category().value().equals(Optional.of(Category.TWO)))
                .filter(test -> !subsystem.channels().isEmpty())
                .flatMap(this::testInterval));
        // Where both are stated, or neither, that was reported, and nothing rests on either.
        Optional<Subsystem.Maker> maker =
                subsystem.maker().filter(one -> subsystem.channels().isEmpty());
        this.pfh = maker.map(this::told).orElseGet(this::looked);
        derived.add(pfh);
        this.level = performance(maker);
        derived.add(level);
        this.replaceAfter = keep(subsystem.maker().map(this::replaceAfter));
    }

    private Optional<Derived> keep(Optional<Derived> one) {
        one.ifPresent(derived::add);
        return one;
    }

    private Derived derived(
            String name, String words, String symbol, String clause, Term expression, Rounding rounding) {
        return new Derived(tag(), name, words, symbol, standard.id() + ", " + clause, expression, rounding);
    }

    private Derived time(String name, String words, String symbol, String clause, Term expression) {
        return derived(name, words, symbol, clause, expression, Rounding.down(Quantity.years("0.01")));
    }

    private Term series(List<PartLife> parts) {
        return parts.isEmpty()
                ? new Withheld("MTTF_D", "no part of it is described")
                : DangerousFailure.ofSeries(times(parts));
    }

    /** Each under a symbol of its own where there are several. */
    private static List<Term> times(List<PartLife> parts) {
        return parts.size() == 1
                ? List.of(parts.get(0).mttfd())
                : IntStream.range(0, parts.size())
                        .<Term>mapToObj(i -> parts.get(i).mttfd().numbered(i + 1))
                        .toList();
    }

    private ChannelLife channel(Subsystem.Channel channel, List<PartLife> parts) {
        int number = channels.size() + 1;
        Derived series = time(
                "channel-" + number,
                "mean time to dangerous failure of the channel "
                        + channel.name().characters(),
                "MTTF_D,C" + number,
                "4.5.2, D.1",
                subsystem
                        .category()
                        .value()
                        .<Term>map(category -> Least.of(series(parts), standard.mostOfChannel(category)))
                        .orElseGet(() -> new Withheld("MTTF_D", "the category is not known")));
        derived.add(series);
        return new ChannelLife(channel, parts, series);
    }

    private Optional<Derived> mttfd() {
        if (channels.isEmpty()) {
            return Optional.empty();
        }
        Term expression = channels.size() == 1
                ? channels.get(0).mttfd()
                : DangerousFailure.symmetrised(
                        channels.get(0).mttfd(), channels.get(1).mttfd());
        return Optional.of(time(
                "mttfd",
                channels.size() == 1
                        ? "mean time to dangerous failure"
                        : "mean time to dangerous failure of each of two channels alike",
                "MTTF_D",
                "4.5.2, D.2",
                expression));
    }

    private Optional<Derived> ofEquipment() {
        return equipment.isEmpty()
                ? Optional.empty()
                : Optional.of(time(
                        "test-equipment",
                        "mean time to dangerous failure of the test equipment",
                        "MTTF_D,TE",
                        "4.5.4, D.1",
                        series(equipment)));
    }

    private Optional<Derived> coverage() {
        List<PartLife> parts = channels.stream()
                .flatMap(channel -> channel.parts().stream())
                .distinct()
                .toList();
        boolean tested = subsystem.category().value().filter(Category::tested).isPresent();
        return channels.isEmpty() || !tested
                ? Optional.empty()
                : Optional.of(derived(
                        "coverage",
                        "average diagnostic coverage",
                        "DC_avg",
                        "Annex E",
                        parts.isEmpty()
                                ? new Withheld("DC_avg", "no part of it is described")
                                : DangerousFailure.averageCoverage(
                                        IntStream.range(0, parts.size())
                                                .mapToObj(i -> parts.get(i)
                                                        .coverage(parts.size() == 1 ? "DC" : "DC_" + (i + 1)))
                                                .toList(),
                                        times(parts)),
                        Rounding.down(Quantity.of("0.01", Unit.PERCENT))));
    }

    private Optional<Derived> score() {
        boolean listed = subsystem.commonCause().stream()
                .allMatch(one -> standard.commonCauseMeasures()
                        .contains(one.measure().value().orElse("")));
        List<Term> scores = subsystem.commonCause().stream()
                .flatMap(measure -> measure.measure().value().stream())
                .filter(standard.commonCauseMeasures()::contains)
                .distinct()
                .<Term>map(standard::score)
                .toList();
        return scores.isEmpty()
                ? Optional.empty()
                : Optional.of(derived(
                        "common-cause",
                        "score of the measures against failures of common cause",
                        "CCF",
                        "Annex F",
                        listed ? new Sum(scores) : new Withheld("CCF", "a measure is not in the list of the edition"),
                        Rounding.down(Quantity.of("1", Unit.POINT))));
    }

    /** By the demands; in the unit in which the time between tests is stated. */
    private Optional<Derived> testInterval(Subsystem.Test test) {
        return test.every()
                .value()
                .map(every -> derived(
                        "test-interval",
                        "longest time from test to test",
                        "t_test",
                        "4.5.4",
                        new Quotient(
                                new Given("t_demand", "from demand to demand", test.demandedEvery()),
                                standard.testsForEachDemand()),
                        Rounding.down(Quantity.of("0.01", every.unit()))));
    }

    private Derived told(Subsystem.Maker maker) {
        return frequency(
                "as its maker states it",
                new Given("PFH_D", "as its maker states it, " + maker.source().characters(), maker.pfh()));
    }

    private Derived looked() {
        Term looked = subsystem
                .category()
                .value()
                .filter(category -> subsystem.maker().isEmpty() && channels.size() == (category.twoChannels() ? 2 : 1))
                .flatMap(category -> mttfd.map(time -> standard.pfh(
                        category,
                        time,
                        coverage.<Term>map(share -> share)
                                .orElseGet(() -> new Withheld("DC_avg", "nothing is tested")))))
                .orElseGet(
                        () -> new Withheld("PFH_D", "category and channels are not known, or do not belong together"));
        return frequency(standard.id() + ", Annex K", looked);
    }

    private Derived frequency(String clause, Term expression) {
        return new Derived(
                tag(),
                "pfh",
                "frequency of dangerous failure",
                "PFH_D",
                clause,
                expression,
                Rounding.upToDigits(DIGITS, expression.value()));
    }

    private Derived performance(Optional<Subsystem.Maker> maker) {
        Rounding step = Rounding.down(Quantity.level("a"));
        Term byPfh = standard.level(pfh);
        return derived(
                "level",
                "performance level",
                "PL",
                "4.5.1",
                maker.<Term>map(one -> new Given(
                                "PL", "as its maker states it, " + one.source().characters(), one.level()))
                        .orElse(byPfh),
                step);
    }

    private Derived replaceAfter(Subsystem.Maker maker) {
        return time(
                "replace-after",
                "time after which it is replaced",
                "T_R",
                "4.5.4",
                maker.missionTime().value().isPresent()
                        ? new Given("T_M", "mission time, " + maker.source().characters(), maker.missionTime())
                        : standard.missionTime());
    }

    public Subsystem subsystem() {
        return subsystem;
    }

    /** Its channels with their parts; none where its maker tells the figures. */
    public List<ChannelLife> channels() {
        return channels;
    }

    /** What tests the channel of category 2. */
    public List<PartLife> equipment() {
        return equipment;
    }

    /** The mean time to dangerous failure that Annex K is entered with; empty where its maker tells the figures. */
    public Optional<Derived> mttfdOfChannels() {
        return mttfd;
    }

    /** The average diagnostic coverage; empty where nothing is tested. */
    public Optional<Derived> averageCoverage() {
        return coverage;
    }

    /** The score of the measures against common causes; empty where none is stated. */
    public Optional<Derived> commonCause() {
        return score;
    }

    /** The mean time to dangerous failure of the test equipment. */
    public Optional<Derived> testEquipment() {
        return ofEquipment;
    }

    /** The frequency of dangerous failure, in 1/h. */
    public Derived pfh() {
        return pfh;
    }

    /** The performance level it reaches. */
    public Derived level() {
        return level;
    }

    /** The time after which it is replaced as a whole; empty where its parts are replaced one by one. */
    public Optional<Derived> replaceAfter() {
        return replaceAfter;
    }

    /** The last day it may be in use as a whole. */
    public Optional<LocalDate> replaceBy() {
        return subsystem
                .maker()
                .flatMap(maker -> replaceAfter.flatMap(after -> PartLife.replaceBy(maker.installed(), after)));
    }

    /** Its replacement as a whole, as something that falls due. */
    public Optional<Due> due() {
        return subsystem
                .maker()
                .flatMap(maker -> replaceAfter.flatMap(after -> replaceBy()
                        .map(day -> new Due(
                                day,
                                tag(),
                                "replace: " + subsystem.name().characters(),
                                PartLife.missionTime(after, maker.missionTime(), maker.source(), standard)
                                        + ", installed " + maker.installed().characters(),
                                maker.installed().where()))));
    }

    @Override
    public String tag() {
        return subsystem.tag().characters();
    }

    @Override
    public List<Derived> derived() {
        return derived;
    }

    @Override
    public Recorded recorded() {
        return subsystem.recorded();
    }

    /** The longest time from test to test; empty where nothing is tested by the clock. */
    Optional<Derived> longestTestInterval() {
        return testInterval;
    }

    ControlStandard standard() {
        return standard;
    }

    /** Every value and rule of the edition that it was held against, kept or not. */
    public Set<Reference> rules() {
        return HeldAgainst.of(this).rules();
    }

    @Override
    public List<Claim> requirements() {
        return HeldAgainst.of(this).claims();
    }

    @Override
    public List<Finding> faults() {
        return HeldAgainst.of(this).findings();
    }

    /** Every part in it, and every part that tests it, each once. */
    public List<PartLife> parts() {
        return Stream.concat(channels.stream().flatMap(channel -> channel.parts().stream()), equipment.stream())
                .distinct()
                .toList();
    }
}
