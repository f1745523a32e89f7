/** The fleet as immutable records: what is in the tables, checked on construction. */
@NullMarked
package dev.injectorplanner.core.fleet;

import org.jspecify.annotations.NullMarked;
