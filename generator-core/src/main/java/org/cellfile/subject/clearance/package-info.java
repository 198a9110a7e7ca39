/** Gaps between what moves and what stands, wide enough that nobody is crushed in them. */
@NullMarked
package org.cellfile.subject.clearance;

import org.jspecify.annotations.NullMarked;
