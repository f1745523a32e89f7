/** Units: km, hours, litres and degrees C inside; miles, US gallons and degrees F for people who use them. */
@NullMarked
package dev.injectorplanner.core.units;

import org.jspecify.annotations.NullMarked;
