package org.cellfile.subject.due;

import java.time.LocalDate;
import org.cellfile.source.Span;

/**
 * Something that falls due.
 *
 * @param on the last day on which what is there still holds
 * @param tag of the thing concerned
 * @param what has to be done by then, as in "function test: Detection with the test rod"
 * @param source who asks for it, with the standing of the source
 * @param where it was stated
 */
public record Due(LocalDate on, String tag, String what, String source, Span where) {}
