package org.cellfile.geometry;

/**
 * Something that nobody gets across unnoticed.
 *
 * @param name by which it is told apart
 */
public record Bar(String name, Shape shape) {}
