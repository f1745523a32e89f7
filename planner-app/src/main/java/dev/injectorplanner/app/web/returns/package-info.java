/** Cores and claims as a working list: to ship, on their way, to claim, answered. */
@NullMarked
package dev.injectorplanner.app.web.returns;

import org.jspecify.annotations.NullMarked;
