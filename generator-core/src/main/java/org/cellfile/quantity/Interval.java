package org.cellfile.quantity;

import java.time.LocalDate;
import java.time.Period;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How often something is due, in the calendar: {@code 6 months} after 31 August is 28 or 29 February.
 *
 * @param number above zero
 */
public record Interval(int number, Step step) {

    /** What is counted. */
    public enum Step {
        DAY("day"),
        WEEK("week"),
        MONTH("month"),
        YEAR("year");

        private final String word;

        Step(String word) {
            this.word = word;
        }
    }

    private static final Pattern WRITTEN = Pattern.compile("([1-9]\\d{0,2}) (day|week|month|year)s?");

    /** Reads {@code 1 year}, {@code 6 months}; empty when it is written in another way. */
    public static Optional<Interval> of(String written) {
        Matcher matcher = WRITTEN.matcher(written);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        for (Step step : Step.values()) {
            if (step.word.equals(matcher.group(2))) {
                return Optional.of(new Interval(Integer.parseInt(matcher.group(1)), step));
            }
        }
        return Optional.empty();
    }

    /** The last day on which what was done that day still holds. */
    public LocalDate after(LocalDate day) {
        return day.plus(period());
    }

    /** The day that lies as long before. */
    public LocalDate before(LocalDate day) {
        return day.minus(period());
    }

    /** True when it is longer than the other, counted from the same day. */
    public boolean longerThan(Interval other) {
        LocalDate day = LocalDate.of(2001, 1, 1);
        return after(day).isAfter(other.after(day));
    }

    private Period period() {
        return switch (step) {
            case DAY -> Period.ofDays(number);
            case WEEK -> Period.ofWeeks(number);
            case MONTH -> Period.ofMonths(number);
            case YEAR -> Period.ofYears(number);
        };
    }

    @Override
    public String toString() {
        return number + " " + step.word + (number == 1 ? "" : "s");
    }
}
