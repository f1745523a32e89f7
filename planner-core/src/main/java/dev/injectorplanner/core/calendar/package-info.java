/** Weeks: the plan counts in ISO weeks. */
@NullMarked
package dev.injectorplanner.core.calendar;

import org.jspecify.annotations.NullMarked;
