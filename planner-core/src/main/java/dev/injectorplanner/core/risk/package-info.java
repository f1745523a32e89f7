/** Chances of failing, what waiting costs, and by when to test. */
@NullMarked
package dev.injectorplanner.core.risk;

import org.jspecify.annotations.NullMarked;
