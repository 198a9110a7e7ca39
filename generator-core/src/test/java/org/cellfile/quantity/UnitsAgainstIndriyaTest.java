package org.cellfile.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.ComparableQuantity;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * Our units against those of tech.units:indriya.
 *
 * <p>The library knows no inch and no pound; they are built here from the yard and the pound of the international agreement of
 * 1959, which are whole fractions of metre and kilogram.
 */
class UnitsAgainstIndriyaTest {

    private static final javax.measure.Unit<Length> YARD =
            Units.METRE.multiply(9144).divide(10000);

    private static final Map<String, javax.measure.Unit<?>> THEIRS = Map.ofEntries(
            Map.entry("mm", javax.measure.MetricPrefix.MILLI(Units.METRE)),
            Map.entry("cm", javax.measure.MetricPrefix.CENTI(Units.METRE)),
            Map.entry("m", Units.METRE),
            Map.entry("in", YARD.divide(36)),
            Map.entry("ft", YARD.divide(3)),
            Map.entry("s", Units.SECOND),
            Map.entry("ms", javax.measure.MetricPrefix.MILLI(Units.SECOND)),
            Map.entry("mm/s", javax.measure.MetricPrefix.MILLI(Units.METRE).divide(Units.SECOND)),
            Map.entry("m/s", Units.METRE_PER_SECOND),
            Map.entry("in/s", YARD.divide(36).divide(Units.SECOND)),
            Map.entry("kg", Units.KILOGRAM),
            Map.entry("g", Units.GRAM),
            Map.entry("lb", Units.KILOGRAM.multiply(45359237).divide(100000000)),
            Map.entry("N", Units.NEWTON),
            Map.entry(
                    "N/cm²",
                    Units.NEWTON.divide(
                            javax.measure.MetricPrefix.CENTI(Units.METRE).pow(2))),
            Map.entry("%", Units.PERCENT));

    /** Both sides carry 34 digits through at most four operations, so that 30 digits must agree. */
    private static final BigDecimal TOLERANCE = new BigDecimal("1e-30");

    private static final List<Dimension> DIMENSIONS = List.of(
            Dimension.LENGTH,
            Dimension.TIME,
            Dimension.SPEED,
            Dimension.MASS,
            Dimension.FORCE,
            Dimension.PRESSURE,
            Dimension.NONE);

    @Test
    void everyUnitThatCanBeWrittenIsCompared() {
        assertThat(DIMENSIONS.stream()
                        .flatMap(dimension -> Unit.written(dimension).stream())
                        .map(Unit::symbol))
                .containsExactlyInAnyOrderElementsOf(THEIRS.keySet());
        THEIRS.keySet().forEach(symbol -> assertThat(Unit.of(symbol)).isPresent());
    }

    static Stream<Arguments> conversions() {
        Random random = new Random(1959);
        return DIMENSIONS.stream().flatMap(dimension -> {
            List<Unit> units = Unit.written(dimension);
            return units.stream()
                    .flatMap(from -> units.stream()
                            .flatMap(to -> IntStream.range(0, 10)
                                    .mapToObj(i -> Arguments.of(
                                            BigDecimal.valueOf(random.nextInt(1_000_000) + 1, random.nextInt(7)),
                                            from,
                                            to))));
        });
    }

    @ParameterizedTest
    @MethodSource("conversions")
    void convertsAlike(BigDecimal number, Unit from, Unit to) {
        BigDecimal ours =
                new org.cellfile.quantity.Quantity(number, from).in(to).number();
        same(ours, converted(number, theirs(from), theirs(to)));
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static BigDecimal converted(BigDecimal number, javax.measure.Unit<?> from, javax.measure.Unit<?> to) {
        return decimal(Quantities.getQuantity(number, (javax.measure.Unit) from).to((javax.measure.Unit) to));
    }

    private static javax.measure.Unit<?> theirs(Unit unit) {
        return Objects.requireNonNull(THEIRS.get(unit.symbol()));
    }

    static Stream<Arguments> products() {
        Random random = new Random(25);
        return Unit.written(Dimension.SPEED).stream()
                .flatMap(speed -> Unit.written(Dimension.TIME).stream()
                        .flatMap(time -> Unit.written(Dimension.LENGTH).stream()
                                .flatMap(length -> IntStream.range(0, 5)
                                        .mapToObj(i -> List.of(
                                                quantity(random, speed),
                                                quantity(random, time),
                                                quantity(random, length))))))
                .map(list -> Arguments.of(list.get(0), list.get(1), list.get(2)));
    }

    private static org.cellfile.quantity.Quantity quantity(Random random, Unit unit) {
        return new org.cellfile.quantity.Quantity(BigDecimal.valueOf(random.nextInt(100_000) + 1, 3), unit);
    }

    /** {@code K · T + C} and {@code (X − C) / K} across units. */
    @ParameterizedTest
    @MethodSource("products")
    void calculatesAlikeAcrossUnits(
            org.cellfile.quantity.Quantity speed,
            org.cellfile.quantity.Quantity time,
            org.cellfile.quantity.Quantity length) {
        ComparableQuantity<Length> path = indriya(speed)
                .multiply(indriya(time))
                .asType(Length.class)
                .to(javax.measure.MetricPrefix.MILLI(Units.METRE));
        Quantity<Length> sum =
                path.add(indriya(length).asType(Length.class).to(javax.measure.MetricPrefix.MILLI(Units.METRE)));
        same(speed.times(time).plus(length).coherent(), decimal(sum));
        same(
                speed.times(time).minus(length).plus(length).per(speed).coherent(),
                decimal(indriya(time).asType(javax.measure.quantity.Time.class).to(Units.SECOND)));
    }

    private static ComparableQuantity<?> indriya(org.cellfile.quantity.Quantity quantity) {
        return Quantities.getQuantity(quantity.number(), theirs(quantity.unit()));
    }

    private static BigDecimal decimal(Quantity<?> quantity) {
        Number value = quantity.getValue();
        if (value instanceof RationalNumber rational) {
            return new BigDecimal(rational.getDividend())
                    .divide(new BigDecimal(rational.getDivisor()), MathContext.DECIMAL128);
        }
        return new BigDecimal(value.toString());
    }

    private static void same(BigDecimal ours, BigDecimal theirs) {
        assertThat(ours.subtract(theirs).abs())
                .as("%s and %s", ours, theirs)
                .isLessThanOrEqualTo(theirs.abs().multiply(TOLERANCE));
    }
}
