/** Plans into workbooks; knows nothing of the database. */
@NullMarked
package dev.injectorplanner.reports;

import org.jspecify.annotations.NullMarked;
