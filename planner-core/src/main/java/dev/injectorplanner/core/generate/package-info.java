/** Made-up fleets with a known truth: for the demo, for benchmarks, and to judge forecasts against. */
@NullMarked
package dev.injectorplanner.core.generate;

import org.jspecify.annotations.NullMarked;
