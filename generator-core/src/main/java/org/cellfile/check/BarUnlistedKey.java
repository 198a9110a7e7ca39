package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.source.Stated;
import org.cellfile.subject.complement.ModeSelector;
import org.cellfile.subject.register.ModeKey;

/** A mode selector is locked, and nobody is listed who can unlock it. */
@AutoService(Check.class)
public final class BarUnlistedKey implements Check {

    public static final FindingId ID = new FindingId("mode-key.not-listed");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<Finding> findings = new ArrayList<>();
        cell.complementary().forEach(one -> {
            if (one.device().sort() instanceof ModeSelector selector
                    && selector.lockedBy()
                            .value()
                            .filter(lock -> !lock.equals("nothing"))
                            .isPresent()
                    && !listed(cell, one.device().tag())) {
                findings.add(Finding.barsRelease(
                        ID,
                        one.tag(),
                        one.device().tag().where(),
                        "the mode selector `" + one.tag() + "` is locked by "
                                + selector.lockedBy().characters()
                                + ", and nothing under `mode-keys` says who can unlock it",
                        "list each key, code or transponder with its number, who holds it or where it is kept, and since"
                                + " when"));
            }
        });
        return findings;
    }

    private static boolean listed(Cell cell, Stated<String> selector) {
        return cell.registers().modeKeys().stream()
                .map(ModeKey::selector)
                .anyMatch(named -> named.value().equals(selector.value()));
    }
}
