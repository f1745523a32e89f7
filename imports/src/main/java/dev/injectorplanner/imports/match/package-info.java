/** How the files of one source are read: kept, written as text, applied. */
@NullMarked
package dev.injectorplanner.imports.match;

import org.jspecify.annotations.NullMarked;
