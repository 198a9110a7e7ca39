/** Numbers with units, exact, and the ways they may be rounded. */
@NullMarked
package org.cellfile.quantity;

import org.jspecify.annotations.NullMarked;
