package org.cellfile.cli;

import java.time.LocalDate;
import java.util.Optional;
import org.cellfile.JudgingDay;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** By which day a check, a release or what was read off a sheet is judged. */
final class DayOption {

    @Option(
            names = "--day",
            paramLabel = "DATE",
            description =
                    "the day by which what falls due is judged, as in 2026-03-31, from the one the files speak of to"
                            + " today (today unless stated); by it an earlier release is built again")
    private @Nullable String written;

    /** The day asked for; empty when none was. */
    Optional<LocalDate> day(CommandLine command) {
        try {
            return Optional.ofNullable(written).map(JudgingDay::of);
        } catch (IllegalArgumentException notADay) {
            throw new ParameterException(command, "--day: " + notADay.getMessage(), notADay);
        }
    }
}
