/** What does not hold, where, because of what, and what to do about it. */
@NullMarked
package org.cellfile.finding;

import org.jspecify.annotations.NullMarked;
