/** The application: store, intake, planning and output joined in one composition root, and the command line. */
@NullMarked
package dev.injectorplanner.app;

import org.jspecify.annotations.NullMarked;
