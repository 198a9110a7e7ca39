package org.cellfile.subject.sheet;

import java.util.ArrayList;
import java.util.List;
import org.cellfile.dossier.Sheet.Kind;
import org.cellfile.dossier.Sign;

/**
 * A headed part of a sheet in one language, while it is being told.
 *
 * @param id a stable word
 * @param sign drawn beside it; decides its colour
 * @param numbered true when its lines are steps to be done in order
 */
public record Part(String id, Sign sign, String title, boolean numbered, List<Line> lines) {

    /** With the plain sign of a kind. */
    public Part(String id, Kind kind, String title, boolean numbered, List<Line> lines) {
        this(id, Sign.of(kind), title, numbered, lines);
    }

    /**
     * A line of it.
     *
     * @param id a stable word by which the plant's own steps are put in order; empty for a line of which there may be several
     */
    public record Line(String id, String text) {}

    /** Another line, which the plant cannot put a step before. */
    Part line(String text) {
        return line("", text);
    }

    Part line(String id, String text) {
        List<Line> longer = new ArrayList<>(lines);
        longer.add(new Line(id, text));
        return with(longer);
    }

    /** With other lines. */
    Part with(List<Line> others) {
        return new Part(id, sign, title, numbered, List.copyOf(others));
    }

    /** With another sign. */
    Part with(Sign another) {
        return new Part(id, another, title, numbered, lines);
    }

    /** With another title. */
    Part titled(String another) {
        return new Part(id, sign, another, numbered, lines);
    }

    /** A line of which there may be several: the first has the id. */
    Part oneOf(String id, String text) {
        return line(lines.stream().anyMatch(one -> one.id().equals(id)) ? "" : id, text);
    }
}
