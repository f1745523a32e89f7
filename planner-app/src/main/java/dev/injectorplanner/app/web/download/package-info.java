/** Files that take long to make: made as a task beside the pages, then fetched. */
@NullMarked
package dev.injectorplanner.app.web.download;

import org.jspecify.annotations.NullMarked;
