/** The one place where store, intake, planning and holds are put together; commands, pages and jobs use it. */
@NullMarked
package dev.injectorplanner.app.assembly;

import org.jspecify.annotations.NullMarked;
