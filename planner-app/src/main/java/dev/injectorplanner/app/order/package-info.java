/** Purchase orders and transfers: placed, confirmed, received in parts, cancelled. */
@NullMarked
package dev.injectorplanner.app.order;

import org.jspecify.annotations.NullMarked;
