package org.cellfile.audit;

import java.util.List;
import java.util.Optional;
import org.cellfile.cell.Cell;
import org.cellfile.render.Attachment;
import org.cellfile.source.World;
import org.cellfile.verdict.Printable;
import org.cellfile.verdict.Verdict;

/** The line from sources to pages, as far as an audit walks it. */
public interface Recomputation {

    /** What came of recomputing some sources. */
    record Outcome(Optional<Cell> cell, Verdict verdict) {}

    /** Recomputes without the day of the run. */
    Outcome recompute(World sources);

    /** What is embedded in a file printed from it. */
    List<Attachment> attachments(Cell cell, Printable printable);

    /** Lays the safety file out; empty when it cannot be. */
    Optional<byte[]> draw(Cell cell, Printable printable);
}
