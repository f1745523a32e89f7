/** Digests: what is mailed to each reader, and when there is nothing to say. */
@NullMarked
package dev.injectorplanner.app.digest;

import org.jspecify.annotations.NullMarked;
