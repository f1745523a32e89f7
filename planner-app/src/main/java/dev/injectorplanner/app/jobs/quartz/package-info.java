/** Quartz: fires what is due, once among all nodes of a database. */
@NullMarked
package dev.injectorplanner.app.jobs.quartz;

import org.jspecify.annotations.NullMarked;
