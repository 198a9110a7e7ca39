/** What is in a PDF that somebody hands over. Nothing in it is trusted. */
@NullMarked
package org.cellfile.audit;

import org.jspecify.annotations.NullMarked;
