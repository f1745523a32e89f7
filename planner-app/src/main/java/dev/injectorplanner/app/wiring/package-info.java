/** Joins jobs, their tasks and the application. */
@NullMarked
package dev.injectorplanner.app.wiring;

import org.jspecify.annotations.NullMarked;
