/** Two states of a cell: what differs between them, and what of its proof that voids. */
@NullMarked
package org.cellfile.compare;

import org.jspecify.annotations.NullMarked;
