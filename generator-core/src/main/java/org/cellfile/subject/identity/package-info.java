/** Chapter one: which cell, whose, within which limits, by which editions. */
@NullMarked
package org.cellfile.subject.identity;

import org.jspecify.annotations.NullMarked;
