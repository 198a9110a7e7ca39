/** A safety file that somebody handed over: read without trust, and held against what its own embedded sources give. */
@NullMarked
package org.cellfile.audit;

import org.jspecify.annotations.NullMarked;
