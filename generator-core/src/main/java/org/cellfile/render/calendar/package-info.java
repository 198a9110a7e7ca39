/** What falls due, as a file for calendar programs. The only package that sees the calendar library. */
@NullMarked
package org.cellfile.render.calendar;

import org.jspecify.annotations.NullMarked;
