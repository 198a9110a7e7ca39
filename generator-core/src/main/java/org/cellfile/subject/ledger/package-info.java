/** The derived values as they were last written down, held against a later recomputation. */
@NullMarked
package org.cellfile.subject.ledger;

import org.jspecify.annotations.NullMarked;
