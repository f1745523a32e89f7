/** Intake: files into the store, row by row, with every row counted. */
@NullMarked
package dev.injectorplanner.app.intake;

import org.jspecify.annotations.NullMarked;
