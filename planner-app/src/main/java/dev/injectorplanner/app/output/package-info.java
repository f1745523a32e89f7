/** Output: a plan into files for its readers. */
@NullMarked
package dev.injectorplanner.app.output;

import org.jspecify.annotations.NullMarked;
