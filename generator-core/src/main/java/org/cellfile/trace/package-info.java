/** Derived values that can say how they were come by. */
@NullMarked
package org.cellfile.trace;

import org.jspecify.annotations.NullMarked;
