/** Coolant: what is drained, poured and collected. */
@NullMarked
package dev.injectorplanner.core.coolant;

import org.jspecify.annotations.NullMarked;
