/** The people who use the program, and what each may do. */
@NullMarked
package dev.injectorplanner.app.people;

import org.jspecify.annotations.NullMarked;
