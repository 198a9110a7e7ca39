/** The one door to FreeMarker: from a template and plain data to escaped XHTML. */
@NullMarked
package org.cellfile.render.template;

import org.jspecify.annotations.NullMarked;
