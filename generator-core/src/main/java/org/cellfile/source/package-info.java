/** Where every stated thing was written: files, positions in them, and the world the program looks at. */
@NullMarked
package org.cellfile.source;

import org.jspecify.annotations.NullMarked;
