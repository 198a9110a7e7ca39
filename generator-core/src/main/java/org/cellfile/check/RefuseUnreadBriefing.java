package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.finding.Nearest;

/** People were briefed in a language in which no sheet of the cell is printed, so that they cannot read it up at the machine. */
@AutoService(Check.class)
public final class RefuseUnreadBriefing implements Check {

    public static final FindingId ID = new FindingId("briefing.not-printed");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        Set<String> printed = cell.sheets().languages();
        return cell.sheets().briefings().stream()
                .map(briefing -> briefing.language())
                .filter(language -> language.value().isPresent() && !printed.contains(language.characters()))
                .map(language -> Finding.refuses(
                        ID,
                        "",
                        language.where(),
                        "people were briefed in `" + language.characters()
                                + "`, and no sheet is printed in that language",
                        "print the sheets in it too, or see in the record which language was meant. Languages printed: "
                                + Nearest.listed(language.characters(), printed)))
                .toList();
    }
}
