package org.cellfile.subject.identity;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Nearest;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;
import org.cellfile.standard.Asked;
import org.cellfile.standard.Asked.Form;
import org.cellfile.standard.CopyKey;
import org.cellfile.standard.CopyValues;
import org.cellfile.standard.Editions;

/**
 * A value that a named person read in a copy of the standard and that is to be used.
 *
 * @param value id of the value, as the register of fixed values lists it
 * @param asked what is asked for under that id; empty when nothing is
 * @param parts one, or one for each row of a table
 * @param clause in which it was read
 * @param copy which copy it was read in
 */
public record CopyValue(
        Stated<String> value,
        Optional<Asked> asked,
        List<Part> parts,
        Stated<String> clause,
        Stated<String> by,
        Stated<LocalDate> on,
        Stated<String> copy) {

    /** An id under which no value of a copy is asked for. */
    public static final FindingId UNKNOWN = new FindingId("copy-value.unknown");

    /** The sort of tags a value can be for; safeguards are read after the identity of the cell. */
    private static final String SAFEGUARD = "safeguard";

    /**
     * One figure.
     *
     * @param key for what it holds
     */
    public record Part(CopyKey key, Stated<Quantity> is) {}

    static CopyValue read(Section section) {
        Stated<String> value = section.text("value");
        Optional<Asked> asked = value.value().flatMap(Editions::asked);
        return new CopyValue(
                value,
                asked,
                asked.map(one -> parts(section, one)).orElseGet(() -> unknown(section, value)),
                section.text("clause"),
                section.reference("by", Person.SORT),
                section.date("on"),
                section.text("copy"));
    }

    private static List<Part> unknown(Section section, Stated<String> value) {
        List.of("is", "for", "rows").forEach(section::has);
        if (value.value().isPresent()) {
            section.report(Finding.refuses(
                    UNKNOWN,
                    value.characters(),
                    value.where(),
                    "`" + value.characters() + "` is not a value that can be told from a copy",
                    Nearest.to(value.characters(), Editions.askedIds())
                            .map(near -> "`" + near
                                    + "` is nearest; a rule in words can only be confirmed, under `confirmations`")
                            .orElse(
                                    "the register of fixed values lists the ids; a rule or a value that is not asked for can"
                                            + " be confirmed under `confirmations`")));
        }
        return List.of();
    }

    private static List<Part> parts(Section section, Asked asked) {
        if (asked.forms().contains(Form.HEIGHTS)
                && (section.has("rows") || asked.forms().size() == 1)) {
            return rows(section, asked, CopyValue::heights);
        }
        if (asked.forms().contains(Form.OPENINGS)) {
            return rows(section, asked, row -> opening(row, asked));
        }
        if (asked.forms().contains(Form.WORDS)) {
            return rows(section, asked, row -> headedByAWord(row, asked));
        }
        Stated<Quantity> is = is(section, asked);
        if (asked.forms().contains(Form.OF_A_SAFEGUARD)) {
            return section.reference("for", SAFEGUARD)
                    .value()
                    .map(tag -> List.of(new Part(new CopyKey.OfSafeguard(tag), is)))
                    .orElse(List.of());
        }
        return List.of(new Part(new CopyKey.Whole(), is));
    }

    /** In the units in which such values are written. */
    private static Stated<Quantity> is(Section section, Asked asked) {
        if (asked.dimension().equals(Dimension.LEVEL)) {
            return section.level("is");
        }
        Optional<Unit> unit = asked.ours().values().stream().map(Quantity::unit).findFirst();
        if (unit.filter(Unit::ofLongTime).isPresent()) {
            return section.meanTime("is");
        }
        if (unit.filter(Unit.POINT::equals).isPresent()) {
            return section.points("is");
        }
        if (asked.dimension().equals(Dimension.NONE)) {
            return unit.filter(one -> !one.equals(Unit.ONE)).isPresent()
                    ? section.positive("is", Dimension.NONE)
                    : section.number("is");
        }
        return asked.aboveZero()
                ? section.positive("is", asked.dimension())
                : section.quantity("is", asked.dimension());
    }

    private static List<Part> rows(Section section, Asked asked, Function<Section, Optional<CopyKey>> key) {
        return Section.each(section.list("rows"), row -> {
                    Optional<CopyKey> read = key.apply(row);
                    Stated<Quantity> is = is(row, asked);
                    return read.map(one -> new Part(one, is));
                })
                .stream()
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<CopyKey> heights(Section row) {
        Stated<Quantity> hazard = row.quantity("hazard", Dimension.LENGTH);
        Stated<Quantity> edge = row.quantity("edge", Dimension.LENGTH);
        return hazard.value().flatMap(a -> edge.value().map(b -> new CopyKey.Heights(a, b)));
    }

    private static Optional<CopyKey> opening(Section row, Asked asked) {
        Set<String> shapes = keys(asked, CopyKey.Opening.class)
                .flatMap(key -> key.shape().stream())
                .collect(Collectors.toCollection(TreeSet::new));
        Stated<Quantity> upTo = row.positive("opening", Dimension.LENGTH);
        if (shapes.isEmpty()) {
            return upTo.value().map(size -> new CopyKey.Opening(Optional.empty(), size));
        }
        Stated<String> shape = row.word("shape", shapes);
        return shape.value().flatMap(one -> upTo.value().map(size -> new CopyKey.Opening(Optional.of(one), size)));
    }

    private static Optional<CopyKey> headedByAWord(Section row, Asked asked) {
        List<CopyKey.Row> known = keys(asked, CopyKey.Row.class).toList();
        String column = known.get(0).column();
        Set<String> words = known.stream().map(CopyKey.Row::word).collect(Collectors.toCollection(TreeSet::new));
        // A row that is asked for under another id is refused with that id, where the rows are held against the table.
        row.textIfStated(column)
                .value()
                .filter(word -> Editions.idOf(asked.reference().clause(), new CopyKey.Row(column, word))
                        .isPresent())
                .ifPresent(words::add);
        return row.word(column, words).value().map(word -> new CopyKey.Row(column, word));
    }

    /** How the rows of the table held here are headed. */
    private static <K extends CopyKey> Stream<K> keys(Asked asked, Class<K> sort) {
        return asked.ours().keySet().stream().filter(sort::isInstance).map(sort::cast);
    }

    /** As the editions read it; parts that could not be read were reported and are left out. */
    List<CopyValues.Read> reads(String name) {
        return parts.stream()
                .flatMap(part -> part.is.value().stream()
                        .map(is -> new CopyValues.Read(
                                value.characters(),
                                part.key,
                                is,
                                clause.characters(),
                                name,
                                on.characters(),
                                copy.characters(),
                                value.where().position())))
                .toList();
    }
}
