/** Stock with serials: injectors received with serial and calibration code, and the kits they are allocated to. */
@NullMarked
package dev.injectorplanner.app.stock;

import org.jspecify.annotations.NullMarked;
