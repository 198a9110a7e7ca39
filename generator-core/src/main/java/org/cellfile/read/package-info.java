/** From the characters of YAML and CSV files to located statements. The only package that sees the YAML library. */
@NullMarked
package org.cellfile.read;

import org.jspecify.annotations.NullMarked;
