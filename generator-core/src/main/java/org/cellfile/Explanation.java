package org.cellfile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.cellfile.cell.Cell;
import org.cellfile.claim.Workings;
import org.cellfile.finding.Nearest;
import org.cellfile.trace.Derived;
import org.cellfile.trace.Drawing;

/** What a finding means, and how a derived value was come by. */
public final class Explanation {

    private static final int MOST_LISTED = 20;

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

    /** What to say when there is no such finding and no such value: the nearest, or the values of the thing that was named. */
    public static String unknown(String id, Optional<Cell> cell) {
        if (cell.isEmpty()) {
            return "There is no finding `" + id
                    + "`. To have a derived value explained, name the cell's folder as well.";
        }
        Set<String> tags = cell.get().derived().keySet();
        String thing = id.contains(".") ? id.substring(0, id.indexOf('.')) : id;
        String ofThing = tags.stream()
                .filter(tag -> tag.startsWith(thing + "."))
                .limit(MOST_LISTED)
                .collect(Collectors.joining("`, `", " Values of `" + thing + "`: `", "`."));
        return "There is no finding and no derived value `" + id + "` in this cell."
                + Nearest.to(id, tags)
                        .map(near -> " `" + near + "` is nearest.")
                        .orElse("")
                + (ofThing.endsWith(": ``.") ? "" : ofThing);
    }
}
