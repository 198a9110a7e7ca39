/** The function tests: what is tested of each device and how, by whom it was, with what result, and when it is due again. */
@NullMarked
package org.cellfile.subject.verification;

import org.jspecify.annotations.NullMarked;
