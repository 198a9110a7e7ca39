package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Quantity;
import org.cellfile.standard.Asked;
import org.cellfile.subject.identity.CopyValue;
import org.cellfile.trace.Standing.Published;

/** A value that was read in a copy and differs from what was published: one of them is wrong, and nobody may pick one silently. */
@AutoService(Check.class)
public final class RefuseContradictedPublication implements Check {

    public static final FindingId ID = new FindingId("standard.contradicts-published");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        for (CopyValue value : cell.identity().copyValues()) {
            for (CopyValue.Part part : value.parts()) {
                value.asked().flatMap(asked -> contradiction(asked, part)).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private static Optional<Finding> contradiction(Asked asked, CopyValue.Part part) {
        Optional<Quantity> ours = Optional.ofNullable(asked.ours().get(part.key()));
        if (asked.reference().standing() instanceof Published published
                && ours.isPresent()
                && part.is().value().isPresent()
                && !part.is().value().equals(ours)) {
            return Optional.of(Finding.refuses(
                    ID,
                    asked.reference().id(),
                    part.is().where(),
                    "`" + asked.reference().id() + "`" + part.key().words() + " is stated as "
                            + part.is().characters() + ", and " + ours.get().plain() + " was published ("
                            + published.source() + ")",
                    "look at the copy again: its edition, the clause, the unit; if it does say so, tell who maintains this"
                            + " program, as no value from a copy takes the place of a published one"));
        }
        return Optional.empty();
    }
}
