/** The {@code schedule} command: solves an instance file. Needs no store. */
@NullMarked
package dev.injectorplanner.app.command.schedule;

import org.jspecify.annotations.NullMarked;
