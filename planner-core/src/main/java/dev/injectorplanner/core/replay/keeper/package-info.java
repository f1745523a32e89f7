/** Who looks after a fleet in a replay: rules by age and signs with their search, the planner, a clairvoyant. */
@NullMarked
package dev.injectorplanner.core.replay.keeper;

import org.jspecify.annotations.NullMarked;
