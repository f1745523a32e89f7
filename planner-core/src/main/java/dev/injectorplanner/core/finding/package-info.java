/** Due findings: something due, with rule, evidence, limit and date. */
@NullMarked
package dev.injectorplanner.core.finding;

import org.jspecify.annotations.NullMarked;
