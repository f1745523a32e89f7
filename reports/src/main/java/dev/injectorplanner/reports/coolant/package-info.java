/** Coolant for the storeman. */
@NullMarked
package dev.injectorplanner.reports.coolant;

import org.jspecify.annotations.NullMarked;
