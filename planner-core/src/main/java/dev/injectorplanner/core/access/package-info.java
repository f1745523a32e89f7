/** Access: what it takes to reach the cylinders of an engine, in labour and drained coolant. */
@NullMarked
package dev.injectorplanner.core.access;

import org.jspecify.annotations.NullMarked;
