/** Guards: a value is right from birth, or is refused in words a person can act on. */
@NullMarked
package dev.injectorplanner.core.check;

import org.jspecify.annotations.NullMarked;
