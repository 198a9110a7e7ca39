package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.subject.function.FunctionLevel;
import org.cellfile.trace.Derived;

/** A required or reached performance level, or a frequency of dangerous failure, that no person has recorded. */
@AutoService(Check.class)
public final class BarUnrecordedLevel implements Check {

    public static final FindingId ID = new FindingId("function.not-recorded");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        for (FunctionLevel function : cell.controlSystem().functions()) {
            // What could not be derived nobody can hold against anything; why it could not is told elsewhere.
            List<Derived> missing = Stream.of(function.required(), function.pfh(), function.reached())
                    .filter(derived -> derived.value().isPresent())
                    .filter(derived -> function.recorded().of(derived).isEmpty())
                    .toList();
            if (!missing.isEmpty()) {
                findings.add(missing(function, missing));
            }
        }
        return findings;
    }

    private static Finding missing(FunctionLevel function, List<Derived> missing) {
        return Finding.barsRelease(
                ID,
                function.tag(),
                function.recorded().where(),
                "nobody has recorded the "
                        + String.join(
                                ", the ", missing.stream().map(Derived::words).toList())
                        + " of `" + function.tag() + "`",
                "work it out by hand from the same inputs and state it under `stated`, as `"
                        + String.join(
                                "`, `", missing.stream().map(Derived::name).toList())
                        + "`; a value copied from this program proves nothing");
    }
}
