/** Hazard zones and what keeps the robot inside them; the hazards met there, and what is done against them. */
@NullMarked
package org.cellfile.subject.hazard;

import org.jspecify.annotations.NullMarked;
