/** What has to be kept under control while the cell is used: changes, bypasses, keys, spare actuators, open points, configurations. */
@NullMarked
package org.cellfile.subject.register;

import org.jspecify.annotations.NullMarked;
