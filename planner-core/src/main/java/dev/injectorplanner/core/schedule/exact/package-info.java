/** The searching scheduler: a Lagrangian bound, a dive, and neighbourhoods solved exactly. */
@NullMarked
package dev.injectorplanner.core.schedule.exact;

import org.jspecify.annotations.NullMarked;
