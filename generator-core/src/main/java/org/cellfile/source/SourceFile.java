package org.cellfile.source;

import java.util.List;

/**
 * A file as it was read.
 *
 * @param path relative to the cell's folder, with forward slashes
 * @param text decoded from UTF-8; empty when the file could not be read as text
 */
public record SourceFile(String path, String text) {

    /** A file that is named in a finding although its text was not read. */
    public static SourceFile unread(String path) {
        return new SourceFile(path, "");
    }

    /** The file as a whole. */
    public Span whole() {
        return new Span(this, 1, 1, 0);
    }

    /** The lines without their ends; both LF and CRLF end a line. */
    public List<String> lines() {
        return text.lines().toList();
    }
}
