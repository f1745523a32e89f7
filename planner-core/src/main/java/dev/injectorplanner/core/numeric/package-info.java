/** Quadrature and search for roots: the numerical tools that the statistics share. */
@NullMarked
package dev.injectorplanner.core.numeric;

import org.jspecify.annotations.NullMarked;
