/** Parts needs for the buyer. */
@NullMarked
package dev.injectorplanner.reports.parts;

import org.jspecify.annotations.NullMarked;
