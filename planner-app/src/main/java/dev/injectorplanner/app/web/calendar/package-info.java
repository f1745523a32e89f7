/** Calendars behind secret addresses, for calendar programs that look in by themselves. */
@NullMarked
package dev.injectorplanner.app.web.calendar;

import org.jspecify.annotations.NullMarked;
