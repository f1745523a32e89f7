/** Old units and warranty claims that go to suppliers: shipped, credited, refused, taken back. */
@NullMarked
package dev.injectorplanner.app.returns;

import org.jspecify.annotations.NullMarked;
