/** What fault codes of the open standards mean: words, what they speak of, the cylinder they name. One table for all. */
@NullMarked
package dev.injectorplanner.core.fault;

import org.jspecify.annotations.NullMarked;
