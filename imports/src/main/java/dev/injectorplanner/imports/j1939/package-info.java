/** Messages of SAE J1939 out of frames: fault messages DM1 and DM2, distance, engine hours, VIN. */
@NullMarked
package dev.injectorplanner.imports.j1939;

import org.jspecify.annotations.NullMarked;
