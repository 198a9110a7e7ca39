package org.cellfile.render.pdf;

import java.time.LocalDate;

/**
 * What a PDF says about itself apart from its pages.
 *
 * @param title shown in the reader program's window
 * @param author who answers for the contents
 * @param day the only date in the file: the day the description speaks of, never that of the run
 * @param metadata the XMP packet, which must agree with the rest
 */
public record Imprint(String title, String author, LocalDate day, String metadata) {}
