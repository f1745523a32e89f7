/** The week ahead: what to decide, what stands in the bays, what waits for parts, what changed. */
@NullMarked
package dev.injectorplanner.app.web.week;

import org.jspecify.annotations.NullMarked;
