/** Files: text or workbook, read as sheets of raw rows, or refused in one sentence. */
@NullMarked
package dev.injectorplanner.imports.file;

import org.jspecify.annotations.NullMarked;
