/** What is printed for cameras to read. The only package that sees the library for it. */
@NullMarked
package org.cellfile.render.code;

import org.jspecify.annotations.NullMarked;
