/** Workbook of results: by month, what rules cost, forecasts held against what happened. */
@NullMarked
package dev.injectorplanner.reports.results;

import org.jspecify.annotations.NullMarked;
