/** Due items: something due, with rule, evidence, limit and date. */
@NullMarked
package dev.injectorplanner.core.due;

import org.jspecify.annotations.NullMarked;
