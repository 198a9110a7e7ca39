package org.cellfile.render;

/**
 * A file embedded in the safety file, so that whoever has the PDF has what it was made from.
 *
 * @param name relative path with forward slashes, unique within the PDF
 * @param mediaType for example {@code application/yaml}
 * @param description one line, shown by the reader program
 */
@SuppressWarnings("ArrayRecordComponent") // Carried from reader to writer; nobody compares two of these.
public record Attachment(String name, String mediaType, byte[] content, String description, Relationship relationship) {

    /** How the file relates to the pages, in the words of ISO 32000-2, 7.11.3 (key AFRelationship). */
    public enum Relationship {
        /** the pages were made from it */
        SOURCE("Source"),
        /** it holds in a form for machines what the pages say in a form for people */
        DATA("Data");

        private final String word;

        Relationship(String word) {
            this.word = word;
        }

        /** The name that stands in the PDF. */
        public String word() {
            return word;
        }
    }
}
