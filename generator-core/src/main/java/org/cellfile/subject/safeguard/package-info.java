/** What keeps people from a hazard zone: one file for each kind. */
@NullMarked
package org.cellfile.subject.safeguard;

import org.jspecify.annotations.NullMarked;
