/** Writing a finished set of pages, whole or not at all. */
@NullMarked
package org.cellfile.output;

import org.jspecify.annotations.NullMarked;
