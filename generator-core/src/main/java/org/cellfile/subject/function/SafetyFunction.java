package org.cellfile.subject.function;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cellfile.claim.Recorded;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Recordings;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.ComplementaryDevice;
import org.cellfile.subject.identity.CellFacts;
import org.cellfile.subject.safeguard.Safeguard;

/**
 * A safety function: what sets it off, what it does, and through what.
 *
 * @param triggeredBy tags of safeguards or complementary devices, each of which sets it off
 * @param trigger what happens there
 * @param reaction what the machine does
 * @param stopCategory of the stop, 0, 1 or 2 (IEC 60204-1); missing for a function that stops nothing
 * @param stopCategoryStated true when that is written, whether it could be read or not
 * @param modes tags of the modes in which it acts
 * @param chain from the sensor to what switches the power
 */
public record SafetyFunction(
        Stated<String> tag,
        Stated<String> name,
        List<Stated<String>> triggeredBy,
        Stated<String> trigger,
        Stated<String> reaction,
        Stated<String> stopCategory,
        boolean stopCategoryStated,
        List<Stated<String>> modes,
        List<Element> chain,
        Optional<Requires> requires,
        Recorded recorded) {

    public static final String SORT = "safety function";

    /** Where in the chain something stands, in the order of the signal. */
    static final List<String> PLACES = List.of("input", "logic", "output");

    /**
     * A subsystem in the chain.
     *
     * @param place {@code input}, {@code logic} or {@code output}
     * @param links names of the links of the response time that it carries; none where its time is part of the stop that was measured
     */
    public record Element(Stated<String> subsystem, Stated<String> place, List<Stated<String>> links) {
        static Element read(Section section) {
            return new Element(
                    section.reference("subsystem", Subsystem.SORT),
                    section.word("place", PLACES),
                    section.textsIfStated("links"));
        }
    }

    /** A performance level that is due for another reason than a hazard of this cell. */
    public record Requires(Stated<Quantity> level, Stated<String> because) {
        static Requires read(Section section) {
            Requires requires = new Requires(section.level("level"), section.statement("because"));
            section.close();
            return requires;
        }
    }

    public static SafetyFunction read(Section section) {
        Stated<String> tag = section.tag(SORT);
        return new SafetyFunction(
                tag,
                section.text("name"),
                section.references("triggered-by", List.of(Safeguard.SORT, ComplementaryDevice.SORT)),
                section.text("trigger"),
                section.text("reaction"),
                section.wordIfStated("stop-category", Set.of("0", "1", "2")),
                section.has("stop-category"),
                section.references("modes", CellFacts.MODE),
                Section.each(section.list("chain"), Element::read),
                section.sectionIfStated("requires").map(Requires::read),
                Recordings.read(section, tag.characters()));
    }

    /** True when that safeguard or device sets it off. */
    public boolean triggeredBy(String device) {
        return triggeredBy.stream().anyMatch(one -> one.value().equals(Optional.of(device)));
    }
}
