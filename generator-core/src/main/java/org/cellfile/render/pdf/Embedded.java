package org.cellfile.render.pdf;

/**
 * A file carried inside a PDF.
 *
 * @param relationship the value of AFRelationship, for example {@code Source}
 */
@SuppressWarnings("ArrayRecordComponent") // Carried from reader to writer; nobody compares two of these.
public record Embedded(String name, String mediaType, byte[] content, String description, String relationship) {}
