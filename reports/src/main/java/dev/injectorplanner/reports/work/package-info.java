/** Upcoming work for the manager, the work list for the mechanic. */
@NullMarked
package dev.injectorplanner.reports.work;

import org.jspecify.annotations.NullMarked;
