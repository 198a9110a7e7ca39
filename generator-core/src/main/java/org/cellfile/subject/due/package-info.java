/** Everything of the cell that falls due on a day. */
@NullMarked
package org.cellfile.subject.due;

import org.jspecify.annotations.NullMarked;
