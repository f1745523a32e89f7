/** What the program works with, to read. */
@NullMarked
package dev.injectorplanner.app.web.settings;

import org.jspecify.annotations.NullMarked;
