/** Files from the browser into the store. */
@NullMarked
package dev.injectorplanner.app.web.imports;

import org.jspecify.annotations.NullMarked;
