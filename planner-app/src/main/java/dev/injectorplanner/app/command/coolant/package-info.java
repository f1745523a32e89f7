/** The command {@code coolant}: what to pour into one engine. Needs no store. */
@NullMarked
package dev.injectorplanner.app.command.coolant;

import org.jspecify.annotations.NullMarked;
