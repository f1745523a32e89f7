/** Generic trouble codes of OBD: answers of ECUs in a bus log, and lists of codes as text. */
@NullMarked
package dev.injectorplanner.imports.obd;

import org.jspecify.annotations.NullMarked;
