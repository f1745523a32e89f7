/** The {@code life} commands: statistics of a CSV file, without the store. */
@NullMarked
package dev.injectorplanner.app.life;

import org.jspecify.annotations.NullMarked;
