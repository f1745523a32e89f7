/** Visits: one truck in one bay for one set of cylinders and ride-along tasks, and what it takes to reach them. */
@NullMarked
package dev.injectorplanner.core.visit;

import org.jspecify.annotations.NullMarked;
