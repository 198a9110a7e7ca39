/** Stated values held against derived ones: the comparison, its message and its drawing, written once. */
@NullMarked
package org.cellfile.claim;

import org.jspecify.annotations.NullMarked;
