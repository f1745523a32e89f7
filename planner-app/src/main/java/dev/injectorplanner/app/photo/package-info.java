/** Photographs of what was found at a truck, as the store keeps them. */
@NullMarked
package dev.injectorplanner.app.photo;

import org.jspecify.annotations.NullMarked;
