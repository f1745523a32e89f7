/** What all workbooks share: heads that stay, filters, totals that follow, charts, print shared access. */
@NullMarked
package dev.injectorplanner.reports.workbook;

import org.jspecify.annotations.NullMarked;
