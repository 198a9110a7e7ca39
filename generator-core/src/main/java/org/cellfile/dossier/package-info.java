/**
 * All that is printed, and nothing that computes: text, figures already written out, and drawings as plain data.
 *
 * <p>Whatever a page shows stands here first, so that two readings of one dossier (a page, a JSON file, a comparison)
 * cannot differ.
 */
@NullMarked
package org.cellfile.dossier;

import org.jspecify.annotations.NullMarked;
