package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Composition;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Span;
import org.cellfile.trace.Reference;

/** A value that rests on memory and that no named person who holds the standard has confirmed. */
@AutoService(Check.class)
public final class BarUnconfirmedMemory implements Check {

    public static final FindingId ID = new FindingId("standard.unconfirmed");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        for (Reference reference : Composition.references(cell)) {
            if (reference.fromMemory()
                    && Composition.confirmation(reference, cell.identity()).isEmpty()) {
                findings.add(Finding.barsRelease(
                        ID,
                        reference.id(),
                        where(cell, reference),
                        "`" + reference.id() + "` (" + reference.name() + ", " + reference.clause()
                                + ") rests on memory, and nobody who holds the standard has confirmed it",
                        "have somebody who holds a copy read it there, and state it under `confirmations`"));
            }
        }
        return findings;
    }

    private static Span where(Cell cell, Reference reference) {
        return cell.identity().editions().stream()
                .filter(edition ->
                        edition.edition().characters().equals(reference.clause().edition()))
                .map(edition -> edition.edition().where())
                .findFirst()
                .orElse(cell.identity().where());
    }
}
