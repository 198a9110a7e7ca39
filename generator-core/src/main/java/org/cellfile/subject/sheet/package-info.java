/** The pages posted at the cell. */
@NullMarked
package org.cellfile.subject.sheet;

import org.jspecify.annotations.NullMarked;
