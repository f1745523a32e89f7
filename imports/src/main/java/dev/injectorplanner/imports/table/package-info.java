/** Tables: their columns, keys, and how a row becomes a record. */
@NullMarked
package dev.injectorplanner.imports.table;

import org.jspecify.annotations.NullMarked;
