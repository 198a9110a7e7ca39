/** The parts of all subjects put together, and composed into what is printed. */
@NullMarked
package org.cellfile.cell;

import org.jspecify.annotations.NullMarked;
