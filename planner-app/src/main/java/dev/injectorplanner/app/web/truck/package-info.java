/** Trucks: their list, and the file of each. */
@NullMarked
package dev.injectorplanner.app.web.truck;

import org.jspecify.annotations.NullMarked;
