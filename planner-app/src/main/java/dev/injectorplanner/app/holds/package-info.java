/** What the manager holds: pins, blocked weeks, and the visits that were confirmed. */
@NullMarked
package dev.injectorplanner.app.holds;

import org.jspecify.annotations.NullMarked;
