/** The plan by week and depot, and what a change of it would do. */
@NullMarked
package dev.injectorplanner.app.web.plan;

import org.jspecify.annotations.NullMarked;
