/** The modes of the cell: what each suspends, who may be inside, and what compensates for it. */
@NullMarked
package org.cellfile.subject.mode;

import org.jspecify.annotations.NullMarked;
