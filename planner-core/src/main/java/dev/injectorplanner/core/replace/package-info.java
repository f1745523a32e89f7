/** When replacing on age pays, and what deferring a replacement costs. */
@NullMarked
package dev.injectorplanner.core.replace;

import org.jspecify.annotations.NullMarked;
