/** From the dossier to the XHTML of a page tree: numbering, contents, links, the words of the frame. */
@NullMarked
package org.cellfile.render.layout;

import org.jspecify.annotations.NullMarked;
