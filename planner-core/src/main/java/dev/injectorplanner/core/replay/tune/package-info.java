/** The engine's free figures, chosen by replay on a fleet's own learned lives. */
@NullMarked
package dev.injectorplanner.core.replay.tune;

import org.jspecify.annotations.NullMarked;
