/** What the jobs do. */
@NullMarked
package dev.injectorplanner.app.jobs.task;

import org.jspecify.annotations.NullMarked;
