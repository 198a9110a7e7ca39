package org.cellfile.subject.register;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Person;
import org.cellfile.subject.identity.Robot;
import org.cellfile.subject.safeguard.Safeguard;

/**
 * A value by which the configuration of a device can be told from every other: a checksum or a signature. A device may display
 * several, and one in its files may be another than the one on its screen; what counts is the one that was meant.
 *
 * @param of tag of the robot or safeguard that is configured so; missing for a device listed nowhere else
 * @param device in words; missing for what has a tag
 * @param what the value stands for
 * @param shownAt page, menu or line where the device displays it
 * @param tested as it was when the safeguards were tested
 * @param installed as it was read at the machine last
 * @param posted as it stands on the sheet posted at the machine; absent before the first posting
 */
public record Configuration(
        Stated<String> tag,
        Stated<String> of,
        Stated<String> device,
        Stated<String> what,
        Stated<String> shownAt,
        Displayed tested,
        Displayed installed,
        Optional<Displayed> posted) {

    public static final String SORT = "configuration";

    /**
     * The value as somebody read it.
     *
     * @param state in a word
     * @param value character by character: zeros in front count, and so does the case of letters
     */
    public record Displayed(String state, Stated<String> value, Stated<LocalDate> on, Stated<String> by) {
        static Displayed read(String state, Section section) {
            Displayed displayed = new Displayed(
                    state, section.text("value"), section.date("on"), section.reference("by", Person.SORT));
            section.close();
            return displayed;
        }
    }

    static Configuration read(Section section) {
        List<String> configured = List.of(Robot.SORT, Safeguard.SORT);
        Configuration configuration = new Configuration(
                section.tag(SORT),
                section.has("of") || !section.has("device")
                        ? section.reference("of", configured)
                        : section.textIfStated("of"),
                section.textIfStated("device"),
                section.statement("what"),
                section.statement("shown-at"),
                Displayed.read("tested", section.section("tested")),
                Displayed.read("installed", section.section("installed")),
                section.sectionIfStated("posted").map(posted -> Displayed.read("posted", posted)));
        // What was read before the test tells nothing about the machine as it was left.
        section.inOrder("tested", configuration.tested.on, "installed", configuration.installed.on);
        return configuration;
    }

    /** Every reading of it. */
    public List<Displayed> displayed() {
        return Stream.concat(Stream.of(tested, installed), posted.stream()).toList();
    }

    /** What is configured so: its tag, or the words for it. */
    public String thing() {
        return of.value().or(device::value).orElse(tag.characters());
    }

    /** True when it is that thing's. */
    public boolean isOf(String thing) {
        return of.value().filter(thing::equals).isPresent();
    }
}
