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
import org.cellfile.subject.complement.ModeSelector;
import org.cellfile.subject.register.ModeKey;

/** A mode key that unlocks no mode selector, or that is listed twice. */
@AutoService(Check.class)
public final class RefuseMisplacedKey implements Check {

    public static final FindingId NO_SELECTOR = new FindingId("mode-key.no-selector");
    public static final FindingId REPEATED = new FindingId("mode-key.repeated");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        Map<String, Stated<String>> numbers = new HashMap<>();
        for (ModeKey key : cell.registers().modeKeys()) {
            String number = key.number().characters();
            if (cell.complementary().stream()
                    .anyMatch(one ->
                            one.device().tag().value().equals(key.selector().value())
                                    && !(one.device().sort() instanceof ModeSelector))) {
                findings.add(Finding.refuses(
                        NO_SELECTOR,
                        key.selector().characters(),
                        key.selector().where(),
                        "the mode key `" + number + "` is listed for `"
                                + key.selector().characters() + "`, which is no mode selector",
                        "name the mode selector the key belongs to"));
            }
            Stated<String> same = key.number().value().isEmpty() ? null : numbers.putIfAbsent(number, key.number());
            if (same != null) {
                findings.add(Finding.refuses(
                        REPEATED,
                        "",
                        key.number().where(),
                        "the mode key `" + number + "` is listed at "
                                + same.where().position() + " as well",
                        "list each key once, with the number marked on it; mark keys that have the same number, so that"
                                + " each can be asked for"));
            }
        }
        return findings;
    }
}
