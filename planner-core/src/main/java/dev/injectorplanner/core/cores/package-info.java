/** Cores: old units owed back for their deposit. */
@NullMarked
package dev.injectorplanner.core.cores;

import org.jspecify.annotations.NullMarked;
