/** What a vehicle's log says of its truck: faults as episodes, odometer and engine hours as readings, the VIN. */
@NullMarked
package dev.injectorplanner.imports.vehicle;

import org.jspecify.annotations.NullMarked;
