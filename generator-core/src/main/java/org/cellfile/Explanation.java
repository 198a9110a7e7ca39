package org.cellfile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.claim.Workings;
import org.cellfile.finding.Nearest;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Drawing;

/** What a finding means, and how a derived value was come by. */
public final class Explanation {

    private Explanation() {}

    /** The page about a sort of finding, if there is one. */
    public static Optional<String> ofFinding(String id) {
        if (!id.matches("[a-z.-]+")) {
            return Optional.empty();
        }
        try (InputStream page = Explanation.class.getResourceAsStream("/org/cellfile/explain/" + id + ".md")) {
            return page == null
                    ? Optional.empty()
                    : Optional.of(new String(page.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** The working of a derived value of a cell, if it has one of that tag. */
    public static Optional<String> ofValue(Cell cell, String tag) {
        return Optional.ofNullable(cell.derived().get(tag)).map(derived -> working(cell, derived));
    }

    private static String working(Cell cell, Derived derived) {
        StringBuilder text = new StringBuilder();
        text.append(derived.tag()).append(": ").append(derived.words()).append("\n\n");
        Drawing.of(derived)
                .lines()
                .forEach(line -> text.append("  ").append(line).append('\n'));
        cell.owner(derived)
                .map(owner -> Workings.agreement(derived, owner.recorded()))
                .filter(agreement -> !agreement.isEmpty())
                .ifPresent(agreement -> text.append("  ").append(agreement).append('\n'));
        List<Derived> below = derived.below();
        if (!below.isEmpty()) {
            text.append("\nIt rests on:\n");
            below.forEach(one -> text.append("  ")
                    .append(one.tag())
                    .append(" = ")
                    .append(Workings.shown(one))
                    .append('\n'));
        }
        return text.toString();
    }

    /** What to say when there is no such finding and no such value. */
    public static String unknown(String id, Optional<Cell> cell) {
        return cell.map(one -> "There is no finding and no derived value `" + id + "` in this cell. Values it has: "
                        + Nearest.listed(id, one.derived().keySet()) + ".")
                .orElse("There is no finding `" + id
                        + "`. To have a derived value explained, name the cell's folder as well.");
    }
}
