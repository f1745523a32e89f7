/** Trucks as a list to work from: figures and state of each, sorted, filtered, kept as views, exported. */
@NullMarked
package dev.injectorplanner.app.web.worklist;

import org.jspecify.annotations.NullMarked;
