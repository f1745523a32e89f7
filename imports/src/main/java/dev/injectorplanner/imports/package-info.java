/** Files into typed rows and row-level complaints; knows nothing of the database. */
@NullMarked
package dev.injectorplanner.imports;

import org.jspecify.annotations.NullMarked;
