/** The months ahead as a workbook. */
@NullMarked
package dev.injectorplanner.reports.outlook;

import org.jspecify.annotations.NullMarked;
