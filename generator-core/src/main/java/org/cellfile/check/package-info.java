/** Refusals that span the cell, one file each, named as what they refuse. */
@NullMarked
package org.cellfile.check;

import org.jspecify.annotations.NullMarked;
