/** From XHTML to the bytes of a PDF/A-3a and PDF/UA-1 file that are the same in every run. */
@NullMarked
package org.cellfile.render.pdf;

import org.jspecify.annotations.NullMarked;
