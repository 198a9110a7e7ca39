/** What complements the safeguards and never guards a hazard zone: emergency stops, enabling devices, mode selectors, pendants, resets. */
@NullMarked
package org.cellfile.subject.complement;

import org.jspecify.annotations.NullMarked;
