/** Energies of the cell, how they are isolated, and how somebody who is trapped is freed. */
@NullMarked
package org.cellfile.subject.energy;

import org.jspecify.annotations.NullMarked;
