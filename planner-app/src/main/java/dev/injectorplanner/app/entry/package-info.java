/** What people enter, checked: everything that is wrong with an entry is reported together, each problem at its field. */
@NullMarked
package dev.injectorplanner.app.entry;

import org.jspecify.annotations.NullMarked;
