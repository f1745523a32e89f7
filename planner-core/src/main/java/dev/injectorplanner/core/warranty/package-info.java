/** Warranty claims: what a supplier owes, with the evidence he asks for. */
@NullMarked
package dev.injectorplanner.core.warranty;

import org.jspecify.annotations.NullMarked;
