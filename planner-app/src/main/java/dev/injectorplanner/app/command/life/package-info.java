/** The {@code life} commands: statistics of a CSV file, without the store. */
@NullMarked
package dev.injectorplanner.app.command.life;

import org.jspecify.annotations.NullMarked;
