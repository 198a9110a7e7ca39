/** Hazard zones and what keeps the robot inside them. */
@NullMarked
package org.cellfile.subject.hazard;

import org.jspecify.annotations.NullMarked;
