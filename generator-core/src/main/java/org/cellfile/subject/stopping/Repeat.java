package org.cellfile.subject.stopping;

import org.cellfile.quantity.Interval;
import org.cellfile.read.Section;
import org.cellfile.source.Stated;

/**
 * How often a stop is measured again.
 *
 * @param source who asks for that
 */
public record Repeat(Stated<Interval> every, Stated<String> source) {

    static Repeat read(Section section) {
        Repeat repeat = new Repeat(section.interval("every"), section.statement("source"));
        section.close();
        return repeat;
    }
}
