/** That a file cannot be read as it is, and how to fix it. */
@NullMarked
package dev.injectorplanner.imports.refusal;

import org.jspecify.annotations.NullMarked;
