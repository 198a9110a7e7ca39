/** The calculations of the trade, one record each, in terms that can draw themselves. */
@NullMarked
package org.cellfile.calculation;

import org.jspecify.annotations.NullMarked;
