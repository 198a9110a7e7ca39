package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.sheet.Briefing;

/** Somebody is recorded twice as briefed on a sheet on one day, so that one of the two may stand for somebody else. */
@AutoService(Check.class)
public final class RefuseRepeatedBriefing implements Check {

    public static final FindingId ID = new FindingId("briefing.repeated");

    private record Key(String name, String sheet, LocalDate on) {}

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        Map<Key, Briefing.Told> before = new HashMap<>();
        List<Finding> findings = new ArrayList<>();
        List<Stated<String>> reported = new ArrayList<>();
        for (Briefing briefing : cell.sheets().briefings()) {
            for (Briefing.Told told : briefing.on().value().isPresent() ? briefing.told() : List.<Briefing.Told>of()) {
                Key key = new Key(
                        told.name(),
                        told.sheet().characters(),
                        briefing.on().value().get());
                Briefing.Told first = before.putIfAbsent(key, told);
                if (first != null) {
                    // Of one who is named twice the later name, else the sheet that is.
                    boolean named = !first.person().where().equals(told.person().where());
                    Stated<String> again = named ? told.person() : told.sheet();
                    if (!reported.contains(again)) {
                        reported.add(again);
                        findings.add(
                                named
                                        ? repeated(
                                                "`" + again.characters() + "`",
                                                " on `" + key.sheet + "` of " + key.on,
                                                again,
                                                first.person(),
                                                "see in the record who signed it; write people of the same name so that they can"
                                                        + " be told apart, and each once")
                                        : repeated(
                                                "the sheet `" + again.characters() + "`",
                                                " of " + key.on,
                                                again,
                                                first.sheet(),
                                                "see in the record which sheet was meant, and name each once"));
                    }
                }
            }
        }
        return findings;
    }

    private static Finding repeated(
            String what, String briefing, Stated<String> again, Stated<String> first, String help) {
        return Finding.refuses(
                ID,
                "",
                again.where(),
                what + " stands a second time in the briefing" + briefing + " ("
                        + first.where().position() + ")",
                help);
    }
}
