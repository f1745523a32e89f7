/** What was really done: receiving of injectors, kits, and visits closed out. */
@NullMarked
package dev.injectorplanner.app.closeout;

import org.jspecify.annotations.NullMarked;
