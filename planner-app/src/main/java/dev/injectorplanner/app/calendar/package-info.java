/** Secret addresses of the visits' calendars. */
@NullMarked
package dev.injectorplanner.app.calendar;

import org.jspecify.annotations.NullMarked;
