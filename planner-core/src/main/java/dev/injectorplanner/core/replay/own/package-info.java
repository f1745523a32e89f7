/** The site's own fleet as a truth to play: its tables, its usage, and the lives that its records teach. */
@NullMarked
package dev.injectorplanner.core.replay.own;

import org.jspecify.annotations.NullMarked;
