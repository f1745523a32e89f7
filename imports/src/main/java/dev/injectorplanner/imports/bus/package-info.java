/** Logs of a vehicle's CAN bus as frames, one after the other: candump lines, hex tables, captures. Memory does not grow with a log. */
@NullMarked
package dev.injectorplanner.imports.bus;

import org.jspecify.annotations.NullMarked;
