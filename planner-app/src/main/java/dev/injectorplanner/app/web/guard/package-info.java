/** What stands before the pages: faults of the store, slow senders, readers' own connections. */
@NullMarked
package dev.injectorplanner.app.web.guard;

import org.jspecify.annotations.NullMarked;
