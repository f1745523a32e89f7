/** What the scheduled jobs did and will do. */
@NullMarked
package dev.injectorplanner.app.web.jobs;

import org.jspecify.annotations.NullMarked;
