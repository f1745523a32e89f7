/** Pages at the truck and in the store: bay sheets, close-outs, receiving, kits, labels. */
@NullMarked
package dev.injectorplanner.app.web.bay;

import org.jspecify.annotations.NullMarked;
