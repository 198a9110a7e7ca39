/** Editions of standards, one file each: which calculation under which clause, with which fixed values. */
@NullMarked
package org.cellfile.standard;

import org.jspecify.annotations.NullMarked;
