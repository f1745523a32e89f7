/** Visit options: which cylinders of a truck in which week, priced against no visit. */
@NullMarked
package dev.injectorplanner.core.option;

import org.jspecify.annotations.NullMarked;
