/** Pages as PDF: fonts and drawings inside, nothing fetched; and the letter-like document that orders and notes share. */
@NullMarked
package dev.injectorplanner.reports.paper;

import org.jspecify.annotations.NullMarked;
