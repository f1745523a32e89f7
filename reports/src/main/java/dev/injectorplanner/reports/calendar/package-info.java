/** Calendar: the visits of a depot as iCalendar (RFC 5545). */
@NullMarked
package dev.injectorplanner.reports.calendar;

import org.jspecify.annotations.NullMarked;
