/** Decisions of the manager's desk: made where they stand, and undone for as long as nothing was built on them. */
@NullMarked
package dev.injectorplanner.app.desk;

import org.jspecify.annotations.NullMarked;
