/** Parts: what the planned visits need, and when. */
@NullMarked
package dev.injectorplanner.core.parts;

import org.jspecify.annotations.NullMarked;
