/** Tables described once: columns with heading, unit, format and value, for sheets, pages, mails and the terminal. */
@NullMarked
package dev.injectorplanner.reports.table;

import org.jspecify.annotations.NullMarked;
