/** The plan: the heart of the program, records in and records out. */
@NullMarked
package dev.injectorplanner.core.plan;

import org.jspecify.annotations.NullMarked;
