/** The plan of the cell: outlines in its own coordinates, and the distances measured on it. */
@NullMarked
package org.cellfile.subject.plan;

import org.jspecify.annotations.NullMarked;
