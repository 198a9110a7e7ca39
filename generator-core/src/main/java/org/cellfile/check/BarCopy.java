package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.cell.Substances;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.signoff.Copies;
import org.cellfile.subject.signoff.InternalPart;

/** The files are those of a copy from which parts were left out: somebody saved them from a safety file. */
@AutoService(Check.class)
public final class BarCopy implements Check {

    public static final FindingId ID = new FindingId("copies.left-out");

    /** A digest would stand for what can be recomputed. */
    public static final FindingId NOTHING_LEFT_OUT = new FindingId("copies.nothing-left-out");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        if (!cell.copies().isCopy() || !cell.copies().withoutInternalParts()) {
            return findings;
        }
        findings.add(
                Finding.barsRelease(
                        ID,
                        "",
                        cell.copies().where(),
                        "this is a copy from which parts were left out, of the chapters `"
                                + String.join("`, `", cell.copies().carried().keySet()) + "`",
                        "read and compare it; to change the cell or to release it, work on the full description, which the plant keeps"));
        for (Copies.Carried carried : cell.copies().leftOut()) {
            Stated<String> chapter = carried.chapter();
            if (cell.statements().stream()
                    .filter(InternalPart::isLeftOut)
                    .noneMatch(statement -> Substances.chapter(statement.key()).equals(chapter.value()))) {
                findings.add(Finding.refuses(
                        NOTHING_LEFT_OUT,
                        "",
                        chapter.where(),
                        "nothing is left out of the chapter `" + chapter.characters()
                                + "`, and a digest stands here in place of its own",
                        "take this copy from the safety file again; nobody writes this list by hand"));
            }
        }
        return findings;
    }
}
