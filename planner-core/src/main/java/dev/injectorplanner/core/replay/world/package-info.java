/** What truly happens to the trucks of one fleet, whoever looks after them: km, units, defects, false codes, sales. */
@NullMarked
package dev.injectorplanner.core.replay.world;

import org.jspecify.annotations.NullMarked;
