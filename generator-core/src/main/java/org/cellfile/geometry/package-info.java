/** Shapes in the plane, measured in millimetres; the only package that sees the geometry library and counts in binary fractions. */
@NullMarked
package org.cellfile.geometry;

import org.jspecify.annotations.NullMarked;
