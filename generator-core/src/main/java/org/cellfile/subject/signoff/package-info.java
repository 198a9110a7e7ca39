/** Who signed what: sign-offs, the keys that prove them, what is asked of them, and what a copy of the file holds. */
@NullMarked
package org.cellfile.subject.signoff;

import org.jspecify.annotations.NullMarked;
