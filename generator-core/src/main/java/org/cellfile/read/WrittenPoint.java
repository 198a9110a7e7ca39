package org.cellfile.read;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cellfile.finding.FindingId;
import org.cellfile.geometry.Point;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.source.Stated;
import org.cellfile.source.Stated.Written;

/** A point of a plan as people write it: {@code [1200, 350]}, two numbers in the unit of the plan. */
final class WrittenPoint {

    static final FindingId NOT_A_POINT = new FindingId("plan.not-a-point");
    static final FindingId MIXED_UNITS = new FindingId("plan.mixed-units");
    static final FindingId FAR_OFF = new FindingId("plan.far-off");

    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,12}(\\.\\d{1,6})?");
    private static final Pattern WITH_UNIT = Pattern.compile("-?[\\d.,]+ *([^\\d.,]+)");

    /** Inches and feet as people write them on drawings. */
    private static final Set<String> MARKS = Set.of("\"", "'");

    /** Further from the origin no point of a robot cell is believed to be (common practice); a slip of a digit is. */
    private static final BigDecimal FURTHEST = Quantity.millimetres("100000").coherent();

    private WrittenPoint() {}

    /** Reads a point; what is wrong with it is reported. */
    static Optional<Stated<Point>> read(String key, Node node, Unit unit, Section section) {
        if (!(node instanceof Node.Sequence pair)
                || pair.items().size() != 2
                || !pair.items().stream().allMatch(Node.Scalar.class::isInstance)) {
            section.refuse(
                    NOT_A_POINT,
                    node.where(),
                    "a point is due under `" + key + "`, and this is not one",
                    "write its two coordinates in brackets, first to the right, then upwards, as in [1200, 350]");
            return Optional.empty();
        }
        List<BigDecimal> read = new ArrayList<>();
        for (Node item : pair.items()) {
            coordinate(key, (Node.Scalar) item, unit, section).ifPresent(read::add);
        }
        if (read.size() < 2) {
            return Optional.empty();
        }
        Point point = new Point(read.get(0), read.get(1));
        return Optional.of(new Written<>(point, node.where(), point.toString()));
    }

    private static Optional<BigDecimal> coordinate(String key, Node.Scalar scalar, Unit unit, Section section) {
        String text = scalar.text().strip();
        if (!NUMBER.matcher(text).matches()) {
            Matcher matcher = WITH_UNIT.matcher(text);
            boolean ofAnotherUnit = matcher.matches()
                    && (MARKS.contains(matcher.group(1))
                            || Unit.of(matcher.group(1)).isPresent());
            section.refuse(
                    ofAnotherUnit ? MIXED_UNITS : NOT_A_POINT,
                    scalar.where(),
                    "the coordinate `" + text + "` under `" + key + "` "
                            + (ofAnotherUnit ? "has a unit of its own" : "is no number that can be read"),
                    "write every coordinate as a bare number in the unit that the plan states, here " + unit.symbol()
                            + ", with a point for the decimals");
            return Optional.empty();
        }
        BigDecimal millimetres = new BigDecimal(text).multiply(unit.size());
        if (millimetres.abs().compareTo(FURTHEST) > 0) {
            section.refuse(
                    FAR_OFF,
                    scalar.where(),
                    "the coordinate " + text + " under `" + key + "` is " + new Quantity(new BigDecimal(text), unit)
                            + ", further from the origin than 100 m",
                    "check its digits and the unit of the plan; put the origin of the coordinates at a point of the cell");
            return Optional.empty();
        }
        return Optional.of(millimetres);
    }
}
