/** Safety functions: the parts they are built of, the performance level they need and the one they reach. */
@NullMarked
package org.cellfile.subject.function;

import org.jspecify.annotations.NullMarked;
