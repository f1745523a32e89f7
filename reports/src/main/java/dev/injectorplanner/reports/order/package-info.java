/** A purchase order as document and workbook. */
@NullMarked
package dev.injectorplanner.reports.order;

import org.jspecify.annotations.NullMarked;
