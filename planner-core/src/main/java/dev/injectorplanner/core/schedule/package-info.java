/** Schedule: which option of which truck in which week, within hours, bays and trucks that must stay on the road. */
@NullMarked
package dev.injectorplanner.core.schedule;

import org.jspecify.annotations.NullMarked;
