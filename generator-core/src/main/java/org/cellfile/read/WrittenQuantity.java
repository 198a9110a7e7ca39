package org.cellfile.read;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Findings;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.quantity.Unit;
import org.cellfile.source.Stated;
import org.cellfile.source.Stated.Written;

/** A number with its unit as people write it: {@code 850 mm}, {@code 0.31 s}, {@code 63 in/s}. */
final class WrittenQuantity {

    static final FindingId NO_UNIT = new FindingId("quantity.no-unit");
    static final FindingId UNKNOWN_UNIT = new FindingId("quantity.unknown-unit");
    static final FindingId ANOTHER_DIMENSION = new FindingId("quantity.another-dimension");
    static final FindingId NOT_A_NUMBER = new FindingId("quantity.not-a-number");
    static final FindingId NEGATIVE = new FindingId("quantity.negative");
    static final FindingId ABSURD = new FindingId("quantity.absurd");

    private static final Pattern WRITTEN =
            Pattern.compile("(-?)(\\d{1,12}(?:\\.\\d{1,12})?)([eE][+-]?\\d{1,2})? *(.*)");
    private static final Pattern LEVEL = Pattern.compile("PL ([a-e])");

    /** Beyond these a robot cell has nothing to measure; a slip of the unit or the decimal point has (common practice). */
    private static final Map<Dimension, Quantity> LARGEST = Map.of(
            Dimension.LENGTH, Quantity.millimetres("100000"),
            Dimension.TIME, Quantity.seconds("60"),
            Dimension.SPEED, Quantity.of("20000", Unit.MILLIMETRE_PER_SECOND),
            Dimension.MASS, Quantity.of("20000", Unit.KILOGRAM),
            Dimension.ANGLE, Quantity.of("90", Unit.DEGREE),
            Dimension.NONE, Quantity.of("1000", Unit.PERCENT));

    /**
     * What fails more often than once in an hour is no safety part, and nobody has seen a part fail so seldom as once in more than
     * a thousand million years (common practice).
     */
    private static final Quantity HIGHEST_RATE = Quantity.perHour("1");

    private static final Quantity LOWEST_RATE = Quantity.perHour("1e-13");

    /** The longest that is believed of a cycle, of a time from test to test, of a life (common practice). */
    static final Quantity LONGEST = Quantity.years("100");

    /** The longest that is believed of a mean time to failure, which is that of many parts together (common practice). */
    static final Quantity LONGEST_MEAN = Quantity.years("1000000000");

    private static final Quantity FULL_CIRCLE = Quantity.of("360", Unit.DEGREE);

    private WrittenQuantity() {}

    /**
     * Reads a quantity; what is wrong with it is reported.
     *
     * @param due the dimension it must have; empty when any will do
     * @param zero whether it may be zero
     */
    static Optional<Stated<Quantity>> read(
            Stated<String> text, String key, Optional<Dimension> due, boolean zero, Findings findings) {
        List<Unit> among = due.map(Unit::written).orElseGet(List::of);
        return read(
                text, key, due, among, due.filter(Dimension.RATE::equals).map(rate -> HIGHEST_RATE), zero, findings);
    }

    /** Reads a time above zero that is not that of a stop: of a cycle, of a life; and not longer than the longest believed. */
    static Optional<Stated<Quantity>> longTime(Stated<String> text, String key, Quantity longest, Findings findings) {
        return read(text, key, Optional.of(Dimension.TIME), Unit.ofLongTimes(), Optional.of(longest), false, findings);
    }

    /** Reads a direction in the plane, or an angle up to a full circle. */
    static Optional<Stated<Quantity>> direction(Stated<String> text, String key, Findings findings) {
        Optional<Dimension> angle = Optional.of(Dimension.ANGLE);
        return read(text, key, angle, Unit.written(Dimension.ANGLE), Optional.of(FULL_CIRCLE), true, findings);
    }

    /** Reads a score above zero. */
    static Optional<Stated<Quantity>> points(Stated<String> text, String key, Findings findings) {
        return read(text, key, Optional.of(Dimension.NONE), List.of(Unit.POINT), Optional.empty(), false, findings);
    }

    /**
     * @param among units to write it in; empty when any will do
     * @param most that is believed of it; empty where that depends on its dimension alone
     */
    private static Optional<Stated<Quantity>> read(
            Stated<String> text,
            String key,
            Optional<Dimension> due,
            List<Unit> among,
            Optional<Quantity> most,
            boolean zero,
            Findings findings) {
        String characters = text.characters();
        Matcher level = LEVEL.matcher(characters);
        if (level.matches()) {
            Quantity letter = Quantity.level(level.group(1));
            return due.isPresent()
                    ? anotherDimension(text, key, letter, due.get(), among, findings)
                    : Optional.of(new Written<>(letter, text.where(), characters));
        }
        String example = among.contains(Unit.YEAR)
                ? "15 min"
                : due.map(WrittenQuantity::example).orElse("850 mm");
        Matcher matcher = WRITTEN.matcher(characters);
        if (!matcher.matches()) {
            return refuse(
                    findings,
                    NOT_A_NUMBER,
                    text,
                    "`" + key + "` is `" + characters + "`, which does not begin with a number",
                    "write digits, a point for the decimals, a space and the unit, as in " + example);
        }
        boolean rate = matcher.group(4).equals(Unit.PER_HOUR.symbol()) || due.equals(Optional.of(Dimension.RATE));
        String exponent = Optional.ofNullable(matcher.group(3)).orElse("");
        // Only a rate is so small that people write it with an exponent.
        String rest = rate ? matcher.group(4) : exponent + matcher.group(4);
        if (Unit.of(rest).isEmpty() && rest.matches("([.,'\\d-]|[eE][+-]?\\d).*")) {
            return refuse(
                    findings,
                    NOT_A_NUMBER,
                    text,
                    "`" + key + "` is `" + characters + "`, whose number cannot be read",
                    "write the decimals after a point and no other marks in the number, as in " + example);
        }
        if (rest.isEmpty()) {
            return refuse(
                    findings,
                    NO_UNIT,
                    text,
                    "`" + key + "` is the bare number " + characters + ", and a quantity with its unit is due",
                    "write the unit after it: " + units(among));
        }
        Optional<Unit> unit = Unit.of(rest);
        boolean ofAnother = unit.filter(one -> due.equals(Optional.of(one.dimension())) && !among.contains(one))
                .isPresent();
        if (unit.isEmpty() || ofAnother) {
            return refuse(
                    findings,
                    UNKNOWN_UNIT,
                    text,
                    "`" + rest + "` is not a unit that can be read here",
                    "write one of " + units(among));
        }
        Quantity quantity =
                new Quantity(new BigDecimal(matcher.group(1) + matcher.group(2) + (rate ? exponent : "")), unit.get());
        if (due.isPresent() && !quantity.dimension().equals(due.get())) {
            return anotherDimension(text, key, quantity, due.get(), among, findings);
        }
        if (quantity.number().signum() < 0 || (quantity.zero() && !zero)) {
            return refuse(
                    findings,
                    NEGATIVE,
                    text,
                    "`" + key + "` is " + characters + ", which cannot be: it must be "
                            + (zero ? "zero or more" : "more than zero"),
                    "check the measurement or the data sheet");
        }
        boolean bounded = !unit.get().ofLongTime() && !unit.get().equals(Unit.POINT);
        Optional<Quantity> largest = most.or(
                () -> Optional.ofNullable(LARGEST.get(quantity.dimension())).filter(one -> bounded));
        if (largest.filter(one -> quantity.compareTo(one) > 0).isPresent()) {
            return absurd(findings, text, key, "more than " + largest.get() + ", the most");
        }
        if (due.equals(Optional.of(Dimension.RATE)) && quantity.compareTo(LOWEST_RATE) < 0) {
            return absurd(findings, text, key, "less than " + LOWEST_RATE + ", the least");
        }
        return Optional.of(new Written<>(quantity, text.where(), characters));
    }

    private static Optional<Stated<Quantity>> anotherDimension(
            Stated<String> text, String key, Quantity quantity, Dimension due, List<Unit> among, Findings findings) {
        return refuse(
                findings,
                ANOTHER_DIMENSION,
                text,
                "`" + key + "` is " + text.characters() + ", "
                        + quantity.dimension().words() + ", and " + due.words() + " is due",
                "write it in " + units(among));
    }

    private static Optional<Stated<Quantity>> absurd(Findings findings, Stated<String> text, String key, String bound) {
        return refuse(
                findings,
                ABSURD,
                text,
                "`" + key + "` is " + text.characters() + ", " + bound + " that is believed of a robot cell",
                "check the decimal point and the unit");
    }

    /** Reads a whole number above zero; what is wrong with it is reported. */
    static Optional<Stated<Quantity>> count(Stated<String> text, String key, Findings findings) {
        if (!text.characters().matches("0*[1-9]\\d{0,3}")) {
            return refuse(
                    findings,
                    NOT_A_NUMBER,
                    text,
                    "`" + key + "` is `" + text.characters() + "`, which is not a whole number above zero",
                    "count them and write the number in digits and without a unit, as in 2");
        }
        return Optional.of(new Written<>(
                new Quantity(new BigDecimal(text.characters()), Unit.ONE), text.where(), text.characters()));
    }

    /** Reads a number above zero that has no unit; what is wrong with it is reported. */
    static Optional<Stated<Quantity>> number(Stated<String> text, String key, Findings findings) {
        String characters = text.characters();
        if (!characters.matches("\\d{1,12}(\\.\\d{1,12})?") || new BigDecimal(characters).signum() == 0) {
            return refuse(
                    findings,
                    NOT_A_NUMBER,
                    text,
                    "`" + key + "` is `" + characters + "`, and a number above zero without a unit is due",
                    "write all its digits and nothing between them, as in 1300000, and a point for the decimals, as in 1.5");
        }
        return Optional.of(new Written<>(new Quantity(new BigDecimal(characters), Unit.ONE), text.where(), characters));
    }

    private static String units(List<Unit> among) {
        List<Unit> units = among.isEmpty() ? List.of(Unit.MILLIMETRE, Unit.SECOND, Unit.KILOGRAM) : among;
        return units.stream().map(Unit::symbol).collect(Collectors.joining("`, `", "`", "`"));
    }

    private static String example(Dimension dimension) {
        if (dimension.equals(Dimension.TIME)) {
            return "0.31 s";
        }
        if (dimension.equals(Dimension.SPEED)) {
            return "250 mm/s";
        }
        if (dimension.equals(Dimension.MASS)) {
            return "38 kg";
        }
        if (dimension.equals(Dimension.ANGLE)) {
            return "25 °";
        }
        if (dimension.equals(Dimension.RATE)) {
            return "2.3e-7 1/h";
        }
        return dimension.equals(Dimension.NONE) ? "100 %" : "850 mm";
    }

    private static Optional<Stated<Quantity>> refuse(
            Findings findings, FindingId id, Stated<String> text, String sentence, String help) {
        findings.add(Finding.refuses(id, "", text.where(), sentence, help));
        return Optional.empty();
    }
}
