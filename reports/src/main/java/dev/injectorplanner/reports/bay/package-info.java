/** Paper for the bay: bay sheets and cylinder labels as PDF, with the cautions that every sheet shows. */
@NullMarked
package dev.injectorplanner.reports.bay;

import org.jspecify.annotations.NullMarked;
