package org.cellfile.check;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;

/** Every check, in the order of their names. */
public final class Checks {

    private static final List<Check> ALL = ServiceLoader.load(Check.class, Checks.class.getClassLoader()).stream()
            .map(ServiceLoader.Provider::get)
            .sorted(Comparator.comparing(check -> check.getClass().getName()))
            .toList();

    private Checks() {}

    public static List<Finding> run(Cell cell, Optional<LocalDate> today) {
        return ALL.stream().flatMap(check -> check.check(cell, today).stream()).toList();
    }
}
