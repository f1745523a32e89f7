/** Days: bay, day and hour of each visit of the coming weeks, within shifts and technicians' hours. */
@NullMarked
package dev.injectorplanner.core.schedule.days;

import org.jspecify.annotations.NullMarked;
