/** The drop folder: files put there are loaded and moved on. */
@NullMarked
package dev.injectorplanner.app.drop;

import org.jspecify.annotations.NullMarked;
