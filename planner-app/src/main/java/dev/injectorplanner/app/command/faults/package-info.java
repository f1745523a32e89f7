/** The command {@code faults}: what a log of bus frames or a list of codes says. Needs no store. */
@NullMarked
package dev.injectorplanner.app.command.faults;

import org.jspecify.annotations.NullMarked;
