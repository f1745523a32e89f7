/** The command line: what a person types, and what is printed for them. */
@NullMarked
package dev.injectorplanner.app.command;

import org.jspecify.annotations.NullMarked;
