/** The runnable jar: arguments in, text and an exit code out. The only package that prints or exits. */
@NullMarked
package org.cellfile.cli;

import org.jspecify.annotations.NullMarked;
