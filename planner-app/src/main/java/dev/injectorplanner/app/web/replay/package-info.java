/** The planner against simple rules, played for years on made-up fleets. */
@NullMarked
package dev.injectorplanner.app.web.replay;

import org.jspecify.annotations.NullMarked;
