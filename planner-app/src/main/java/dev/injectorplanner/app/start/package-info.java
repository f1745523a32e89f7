/** The first hour with a fleet: starter kits, what is missing, templates. */
@NullMarked
package dev.injectorplanner.app.start;

import org.jspecify.annotations.NullMarked;
