package org.cellfile.source;

/**
 * A stretch of characters on one line of a file.
 *
 * @param line from 1
 * @param column from 1, counted in Unicode code points
 * @param length in code points; 0 when the place is known but no characters stand there
 */
public record Span(SourceFile file, int line, int column, int length) implements Comparable<Span> {

    /** {@code file:line:column}, the form editors jump to. */
    public String position() {
        return file.path() + ":" + line + ":" + column;
    }

    @Override
    public int compareTo(Span other) {
        int byFile = file.path().compareTo(other.file.path());
        if (byFile != 0) {
            return byFile;
        }
        return line != other.line ? Integer.compare(line, other.line) : Integer.compare(column, other.column);
    }
}
