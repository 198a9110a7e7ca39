/** Stop evidence: runs, conditions, statistics, and the value carried forward. */
@NullMarked
package org.cellfile.subject.stopping;

import org.jspecify.annotations.NullMarked;
