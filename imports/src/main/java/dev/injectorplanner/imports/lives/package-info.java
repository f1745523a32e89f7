/** Reads the number tables of the {@code life} commands: lives, repeats, effects. */
@NullMarked
package dev.injectorplanner.imports.lives;

import org.jspecify.annotations.NullMarked;
