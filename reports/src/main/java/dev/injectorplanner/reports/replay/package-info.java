/** What a replay came to, as a workbook and as columns that pages share. */
@NullMarked
package dev.injectorplanner.reports.replay;

import org.jspecify.annotations.NullMarked;
