/** Matches proposed for foreign files, for a person to confirm. */
@NullMarked
package dev.injectorplanner.imports.propose;

import org.jspecify.annotations.NullMarked;
