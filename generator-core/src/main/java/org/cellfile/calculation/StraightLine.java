package org.cellfile.calculation;

import java.util.ArrayList;
import java.util.List;
import org.cellfile.quantity.Quantity;
import org.cellfile.trace.Count;
import org.cellfile.trace.Difference;
import org.cellfile.trace.Product;
import org.cellfile.trace.Quotient;
import org.cellfile.trace.Root;
import org.cellfile.trace.Sum;
import org.cellfile.trace.Term;

/**
 * The straight line of least squares through readings taken on several days, its confidence band, and where both meet a limit.
 *
 * <p>The band is that of the line, not of single readings: {@code t_m + b · (x − x_m) ± t · s · √(1/n + (x − x_m)²/S)}. Where it meets
 * a limit was given by Fieller: both ends solve {@code (t_m + b · (x − x_m) − L)² = t² · s² · (1/n + (x − x_m)²/S)}. Both are from
 * memory and are held against Apache Commons in the tests.
 *
 * @param days on which each was taken, counted from one day, at least three different ones
 * @param readings as many
 */
public record StraightLine(List<Term> days, List<Term> readings) {

    public StraightLine {
        days = List.copyOf(days);
        readings = List.copyOf(readings);
    }

    /** The arithmetic mean of the days. */
    public Term meanDay() {
        return new Quotient(new Sum(days), count());
    }

    /** The arithmetic mean of the readings. */
    public Term meanReading() {
        return new Quotient(new Sum(readings), count());
    }

    /** The sum of squares of the days about their mean. */
    public Term spread(Term meanDay) {
        return new Sum(days.stream()
                .<Term>map(day -> square(new Difference(day, meanDay)))
                .toList());
    }

    /** By how much the line rises in a day. */
    public Term slope(Term meanDay, Term meanReading, Term spread) {
        List<Term> products = new ArrayList<>();
        for (int i = 0; i < days.size(); i++) {
            products.add(
                    new Product(new Difference(days.get(i), meanDay), new Difference(readings.get(i), meanReading)));
        }
        return new Quotient(new Sum(products), spread);
    }

    /** The degrees of freedom that two constants of the line leave. */
    public Term degrees() {
        return new Difference(count(), new Count(Quantity.count(2)));
    }

    /** The standard deviation of the readings about the line. */
    public Term scatter(Term meanDay, Term meanReading, Term slope) {
        List<Term> squares = new ArrayList<>();
        for (int i = 0; i < days.size(); i++) {
            Term online = Sum.of(meanReading, new Product(slope, new Difference(days.get(i), meanDay)));
            squares.add(square(new Difference(readings.get(i), online)));
        }
        return new Root(new Quotient(new Sum(squares), degrees()));
    }

    /**
     * By how much the square of the slope is above that which mere scatter gives. Not above zero: the line cannot be told from a level
     * one.
     *
     * @param doubt Student's t times the scatter
     */
    public static Term certainty(Term slope, Term doubt, Term spread) {
        return new Difference(square(slope), new Quotient(square(doubt), spread));
    }

    /** The day on which the line meets a limit. */
    public static Term meeting(Term meanDay, Term meanReading, Term slope, Term limit) {
        return Sum.of(meanDay, new Quotient(new Difference(limit, meanReading), slope));
    }

    /**
     * The day on which the upper edge of the band meets a limit above the readings; {@link #certainty} is above zero.
     *
     * @param gap of the limit above the mean of the readings
     */
    public Term earliest(Term meanDay, Term slope, Term gap, Term doubt, Term certainty, Term spread) {
        return Sum.of(
                meanDay,
                new Quotient(new Difference(new Product(slope, gap), width(gap, doubt, certainty, spread)), certainty));
    }

    /** The day on which the lower edge does. */
    public Term latest(Term meanDay, Term slope, Term gap, Term doubt, Term certainty, Term spread) {
        return Sum.of(
                meanDay,
                new Quotient(Sum.of(new Product(slope, gap), width(gap, doubt, certainty, spread)), certainty));
    }

    private Term width(Term gap, Term doubt, Term certainty, Term spread) {
        return new Product(
                doubt, new Root(Sum.of(new Quotient(certainty, count()), new Quotient(square(gap), spread))));
    }

    /** The line on a day. */
    public static Term on(Term day, Term meanDay, Term meanReading, Term slope) {
        return Sum.of(meanReading, new Product(slope, new Difference(day, meanDay)));
    }

    /** Half the width of the band on a day. */
    public Term halfBand(Term day, Term meanDay, Term doubt, Term spread) {
        Term apart = new Difference(day, meanDay);
        return new Product(
                doubt,
                new Root(Sum.of(
                        new Quotient(new Count(Quantity.count(1)), count()), new Quotient(square(apart), spread))));
    }

    private Term count() {
        return new Count(Quantity.count(days.size()));
    }

    private static Term square(Term term) {
        return new Product(term, term);
    }
}
