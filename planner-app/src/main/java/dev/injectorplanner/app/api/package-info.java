/** What other programs read and send, as plain values: rows checked like a file's, answers kept by key, pages by cursor. */
@NullMarked
package dev.injectorplanner.app.api;

import org.jspecify.annotations.NullMarked;
