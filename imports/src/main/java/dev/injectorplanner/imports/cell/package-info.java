/** Cells: how a text becomes a number, a date, a list of cylinders, and how each is written. */
@NullMarked
package dev.injectorplanner.imports.cell;

import org.jspecify.annotations.NullMarked;
