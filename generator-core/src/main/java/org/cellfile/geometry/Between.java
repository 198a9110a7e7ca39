package org.cellfile.geometry;

import java.math.BigDecimal;

/** The straight way from one shape to another. */
public record Between(Point from, Point to) {

    /** The square of its length, in mm². */
    public BigDecimal square() {
        BigDecimal x = to.x().subtract(from.x());
        BigDecimal y = to.y().subtract(from.y());
        return x.multiply(x).add(y.multiply(y));
    }

    /** The same the other way round. */
    public Between reversed() {
        return new Between(to, from);
    }
}
