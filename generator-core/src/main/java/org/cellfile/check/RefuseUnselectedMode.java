package org.cellfile.check;

import com.google.auto.service.AutoService;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.cellfile.cell.Cell;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.subject.complement.ModeSelector;
import org.cellfile.subject.mode.Mode;

/** Mode selectors are listed, and none of them selects a mode. */
@AutoService(Check.class)
public final class RefuseUnselectedMode implements Check {

    public static final FindingId ID = new FindingId("mode.not-selected");

    @Override
    public List<Finding> check(Cell cell, Optional<LocalDate> today) {
        List<ModeSelector> selectors = cell.complementary().stream()
                .map(one -> one.device().sort())
                .filter(ModeSelector.class::isInstance)
                .map(ModeSelector.class::cast)
                .toList();
        Set<String> selected = selectors.stream()
                .flatMap(selector -> selector.modes().stream())
                .map(mode -> mode.characters())
                .collect(Collectors.toSet());
        return cell.modes().stream()
                .map(Mode::tag)
                .filter(tag -> !selectors.isEmpty() && tag.value().isPresent())
                .filter(tag -> !selected.contains(tag.characters()))
                .map(
                        tag -> Finding.refuses(
                                ID,
                                tag.characters(),
                                tag.where(),
                                "no mode selector selects `" + tag.characters() + "`",
                                "list it under `modes` of the selector that does; a mode that comes by itself is none people can rely on"))
                .toList();
    }
}
