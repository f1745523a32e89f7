/** Inspection by the delay-time model: how often to test, and by when. */
@NullMarked
package dev.injectorplanner.core.inspection;

import org.jspecify.annotations.NullMarked;
