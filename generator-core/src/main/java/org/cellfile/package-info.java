/** The generator: from a cell's folder to a refusal or a set of pages. */
@NullMarked
package org.cellfile;

import org.jspecify.annotations.NullMarked;
