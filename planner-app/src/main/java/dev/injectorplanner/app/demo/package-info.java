/** The demo: sample files into an embedded store, a plan, the sheets. */
@NullMarked
package dev.injectorplanner.app.demo;

import org.jspecify.annotations.NullMarked;
