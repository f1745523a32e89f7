/** When jobs are due: local times in a zone, through both clock changes. Pure. */
@NullMarked
package dev.injectorplanner.app.jobs.time;

import org.jspecify.annotations.NullMarked;
