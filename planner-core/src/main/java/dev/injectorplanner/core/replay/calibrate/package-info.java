/** The planning figures, chosen by replay on a fleet's own learned lives. */
@NullMarked
package dev.injectorplanner.core.replay.calibrate;

import org.jspecify.annotations.NullMarked;
