package org.cellfile.subject.function;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.claim.Recorded;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Recordings;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.standard.Category;

/**
 * A part of a control system that carries out a part of a safety function: bought with its figures, or built from parts in channels.
 *
 * @param maker what its maker tells; empty where it is built from parts
 * @param channels one or two; none where its maker tells
 * @param commonCause measures against failures that strike both channels, or channel and test, at once
 * @param test of the channel of category 2
 */
public record Subsystem(
        Stated<String> tag,
        Stated<String> name,
        Stated<Category> category,
        Optional<Maker> maker,
        List<Channel> channels,
        List<CommonCause> commonCause,
        Optional<Test> test,
        Recorded recorded) {

    public static final String SORT = "subsystem";

    /** Its maker tells its figures and it is built from parts, or neither. */
    public static final FindingId BOUGHT_OR_BUILT = new FindingId("subsystem.bought-or-built");

    /**
     * What its maker tells.
     *
     * @param pfh frequency of dangerous failure
     */
    public record Maker(
            Stated<Quantity> pfh,
            Stated<Quantity> level,
            Stated<String> source,
            Stated<Quantity> missionTime,
            Stated<LocalDate> installed) {

        static Maker read(Section section) {
            Maker maker = new Maker(
                    section.positive("pfh", Dimension.RATE),
                    section.level("level"),
                    section.text("source"),
                    section.longTimeIfStated("mission-time"),
                    section.date("installed"));
            section.close();
            return maker;
        }
    }

    /**
     * Parts that must all work for the channel to work.
     *
     * @param parts tags, in signal order
     */
    public record Channel(Stated<String> name, List<Stated<String>> parts) {
        static Channel read(Section section) {
            return new Channel(section.text("name"), section.references("parts", Part.SORT));
        }
    }

    /** A measure against failures of common cause, by its word in the standard's list, and how it was taken. */
    public record CommonCause(Stated<String> measure, Stated<String> how) {
        static CommonCause read(Section section) {
            return new CommonCause(section.text("measure"), section.statement("how"));
        }
    }

    /**
     * How the channel of category 2 is tested.
     *
     * @param every time from test to test; missing where it is tested when it is demanded
     * @param demandedEvery time from demand to demand
     * @param whenDemanded how the test at a demand comes before the hazard; missing where it is tested by the clock
     * @param equipment tags of the parts that test it
     */
    public record Test(
            Stated<Quantity> every,
            Stated<Quantity> demandedEvery,
            Stated<String> whenDemanded,
            List<Stated<String>> equipment) {

        static Test read(Section section) {
            boolean whenDemanded = section.has("when-demanded");
            Stated<Quantity> none = new Stated.Missing<>(section.where(), "every");
            Test test = new Test(
                    whenDemanded ? none : section.longTime("every"),
                    whenDemanded ? none : section.longTime("demanded-every"),
                    section.statementIfStated("when-demanded"),
                    section.references("equipment", Part.SORT));
            section.close();
            return test;
        }
    }

    public static Subsystem read(Section section) {
        Stated<String> tag = section.tag(SORT);
        Optional<Section> maker = section.sectionIfStated("maker");
        List<Section> channels = section.listIfStated("channels");
        if (maker.isPresent() != channels.isEmpty()) {
            section.report(Finding.refuses(
                    BOUGHT_OR_BUILT,
                    tag.characters(),
                    section.where(),
                    "`" + tag.characters() + "` has "
                            + (maker.isPresent()
                                    ? "figures of its maker and channels of its own"
                                    : "neither figures of its maker nor channels"),
                    "state `maker` for what was bought with its figures, or `channels` for what was built from parts"));
        }
        return new Subsystem(
                tag,
                section.text("name"),
                section.word("category", Category.words())
                        .map(word -> Category.of(word).orElseThrow()),
                maker.map(Maker::read),
                Section.each(channels, Channel::read),
                Section.each(section.listIfStated("common-cause"), CommonCause::read),
                section.sectionIfStated("test").map(Test::read),
                Recordings.read(section, tag.characters()));
    }

    /** The parts it is built of and those that test it, where they are named. */
    public Stream<Stated<String>> parts() {
        return Stream.concat(
                channels.stream().flatMap(channel -> channel.parts().stream()),
                test.stream().flatMap(one -> one.equipment().stream()));
    }
}
