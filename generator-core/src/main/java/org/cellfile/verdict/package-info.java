/** The one place where findings become a decision. */
@NullMarked
package org.cellfile.verdict;

import org.jspecify.annotations.NullMarked;
