/** What the manager holds: pins, refusals, and the visits that were announced. */
@NullMarked
package dev.injectorplanner.app.holds;

import org.jspecify.annotations.NullMarked;
