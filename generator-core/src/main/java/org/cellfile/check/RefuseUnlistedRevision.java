package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.identity.Revision;

/** A revision that the revision list does not end with. */
@AutoService(Check.class)
public final class RefuseUnlistedRevision implements Check {

    public static final FindingId ID = new FindingId("revision.not-listed");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        Stated<String> revision = cell.identity().facts().revision();
        List<Revision> listed = cell.identity().revisions();
        if (revision.value().isEmpty() || listed.isEmpty()) {
            return List.of();
        }
        String last = listed.get(listed.size() - 1).revision().characters();
        if (last.equals(revision.characters())) {
            return List.of();
        }
        return List.of(Finding.refuses(
                ID,
                "",
                revision.where(),
                "the cell is at revision `" + revision.characters() + "`, and the list of revisions ends with `" + last
                        + "`",
                "add a line under `revisions` that says what changed, or correct `revision`"));
    }
}
