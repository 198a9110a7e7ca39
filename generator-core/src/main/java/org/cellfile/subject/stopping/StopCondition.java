package org.cellfile.subject.stopping;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.cellfile.claim.Recorded;
import org.cellfile.finding.Finding;
import org.cellfile.finding.FindingId;
import org.cellfile.quantity.Dimension;
import org.cellfile.quantity.Quantity;
import org.cellfile.read.Recordings;
import org.cellfile.read.Section;
import org.cellfile.source.Span;
import org.cellfile.source.Stated;

/**
 * One condition under which a stop was measured, with its runs.
 *
 * @param tag the test's tag and the condition's own
 * @param extension of the arm, as a share of its reach
 * @param state warm or cold
 * @param trigger which device was interrupted, and how
 */
public record StopCondition(
        String tag,
        Stated<String> name,
        Stated<String> axis,
        Stated<Quantity> load,
        Stated<Quantity> speed,
        Stated<Quantity> extension,
        Stated<String> state,
        Stated<String> trigger,
        List<Run> runs,
        Recorded recorded,
        Span where) {

    /** Runs are stated twice, or not at all. */
    public static final FindingId RUNS = new FindingId("stopping.where-are-the-runs");

    /** Time and distance of one stop. */
    public record Run(Stated<Quantity> time, Stated<Quantity> distance) {}

    private static final String TIME = "time";
    private static final String DISTANCE = "distance";

    static StopCondition read(Section section, String test) {
        Stated<String> name = section.innerTag();
        String tag = test + "." + name.characters();
        return new StopCondition(
                tag,
                name,
                section.text("axis"),
                section.quantity("load", Dimension.MASS),
                section.positive("speed", Dimension.SPEED),
                section.quantity("extension", Dimension.NONE),
                section.word("state", Set.of("warm", "cold")),
                section.text("trigger"),
                runs(section, tag),
                Recordings.read(section, tag),
                section.where());
    }

    private static List<Run> runs(Section section, String tag) {
        boolean inline = section.has("runs");
        boolean inFile = section.has("runs-file");
        if (inline == inFile) {
            section.report(Finding.refuses(
                    RUNS,
                    tag,
                    section.where(),
                    inline
                            ? "`" + tag + "` states its runs and names a file of runs as well"
                            : "`" + tag + "` neither states its runs nor names a file of runs",
                    "write them under `runs`, or name a CSV file under `runs-file`"));
        }
        if (inline) {
            return Section.each(section.list("runs"), StopCondition::run);
        }
        if (!inFile) {
            return List.of();
        }
        Map<String, Dimension> columns = new TreeMap<>(Map.of(TIME, Dimension.TIME, DISTANCE, Dimension.LENGTH));
        return section.csv("runs-file", columns)
                .map(file -> file.rows().stream()
                        .map(row -> new Run(cell(row, TIME, section), cell(row, DISTANCE, section)))
                        .toList())
                .orElseGet(List::of);
    }

    private static Stated<Quantity> cell(Map<String, Stated<Quantity>> row, String column, Section section) {
        return row.getOrDefault(column, new Stated.Missing<>(section.where(), column));
    }

    private static Run run(Section run) {
        return new Run(run.positive(TIME, Dimension.TIME), run.quantity(DISTANCE, Dimension.LENGTH));
    }
}
