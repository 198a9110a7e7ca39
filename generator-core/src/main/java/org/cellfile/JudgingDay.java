package org.cellfile;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;

/**
 * The day by which somebody wants a check or a release judged: what fell due by then is overdue, what fell due since is not. It is
 * how an earlier release is built again.
 */
public final class JudgingDay {

    /** The day asked for has not come yet, or lies before the one the description speaks of. */
    public static final FindingId NOT_POSSIBLE = new FindingId("day.not-possible");

    private JudgingDay() {}

    /**
     * Reads a day.
     *
     * @throws IllegalArgumentException when what is written is none, with a sentence for the user
     */
    public static LocalDate of(String written) {
        if (written.matches("\\d{4}-\\d{2}-\\d{2}")) {
            try {
                return LocalDate.parse(written);
            } catch (DateTimeException noSuchDay) {
                throw new IllegalArgumentException("there is no day " + written + " in the calendar", noSuchDay);
            }
        }
        throw new IllegalArgumentException(
                "`" + written + "` is not written as a day: write year, month and day with hyphens, as in 2026-03-31");
    }

    /** Why a cell cannot be judged by a day. */
    static List<Finding> findings(Cell cell, LocalDate day, LocalDate today) {
        Stated<LocalDate> asOf = cell.identity().facts().asOf();
        List<Finding> findings = new ArrayList<>();
        if (day.isAfter(today)) {
            findings.add(Finding.refuses(
                    NOT_POSSIBLE,
                    "",
                    asOf.where(),
                    "the cell was to be judged by " + day + ", which has not come: today is " + today,
                    "leave the day out, so that the cell is judged by today"));
        }
        asOf.value()
                .filter(day::isBefore)
                .ifPresent(described -> findings.add(Finding.refuses(
                        NOT_POSSIBLE,
                        "",
                        asOf.where(),
                        "the cell was to be judged by " + day + ", before the day this description speaks of, "
                                + described,
                        "take the files as they were on that day from version control, or name the day on which this"
                                + " description was released")));
        return findings;
    }
}
