package org.cellfile.render;

import java.util.List;
import java.util.SortedMap;
import org.cellfile.finding.Finding;

/** What became of laying out: every page of every file, or the reasons why not all of it can be printed. */
public sealed interface Rendering {

    /**
     * Everything was laid out; nothing has been written.
     *
     * @param files the bytes of each file by its path in the output folder
     */
    record Pages(SortedMap<String, byte[]> files) implements Rendering {}

    /** Something cannot be printed as it stands, so that nothing is. */
    record Unprintable(List<Finding> findings) implements Rendering {
        public Unprintable {
            findings = List.copyOf(findings);
        }
    }
}
