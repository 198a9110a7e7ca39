/**
 * A printable dossier laid out as PDF pages, in memory. Nothing here decides or computes: it prints what the dossier
 * says, or says why that cannot be printed.
 */
@NullMarked
package org.cellfile.render;

import org.jspecify.annotations.NullMarked;
