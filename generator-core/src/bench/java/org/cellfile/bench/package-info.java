/** Timings, run by hand; no test depends on them. */
@NullMarked
package org.cellfile.bench;

import org.jspecify.annotations.NullMarked;
