/** Blank forms for the shop floor, with the cell's own devices filled in. */
@NullMarked
package org.cellfile.subject.form;

import org.jspecify.annotations.NullMarked;
