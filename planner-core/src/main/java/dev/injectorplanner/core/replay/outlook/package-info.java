/** The replay run forward from today's fleet: parts, hours, coolant, money and failures by month, with bands. */
@NullMarked
package dev.injectorplanner.core.replay.outlook;

import org.jspecify.annotations.NullMarked;
