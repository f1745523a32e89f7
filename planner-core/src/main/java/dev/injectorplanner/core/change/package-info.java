/** Whether injectors of a part, or one batch of it, fail sooner than those before them. */
@NullMarked
package dev.injectorplanner.core.change;

import org.jspecify.annotations.NullMarked;
