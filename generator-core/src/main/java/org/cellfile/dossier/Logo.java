package org.cellfile.dossier;

/**
 * The plant's mark at the head of its sheets, as far as it is drawn: shapes in flat colours, or points.
 *
 * @param svg the shapes as SVG elements without text, addresses or code; empty when it is made of points
 * @param png the points as a PNG file in Base64; empty when it is made of shapes
 * @param box left, top, width and height of it, separated by single spaces
 */
public record Logo(String svg, String png, String box) {

    public static final Logo NONE = new Logo("", "", "0 0 1 1");
}
