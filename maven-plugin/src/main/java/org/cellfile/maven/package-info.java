/** Maven goals: thin, over the same generator as the runnable jar. */
@NullMarked
package org.cellfile.maven;

import org.jspecify.annotations.NullMarked;
