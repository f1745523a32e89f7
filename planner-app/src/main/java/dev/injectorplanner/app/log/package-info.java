/** What the log leaves out and says instead. */
@NullMarked
package dev.injectorplanner.app.log;

import org.jspecify.annotations.NullMarked;
