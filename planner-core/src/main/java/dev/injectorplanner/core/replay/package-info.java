/**
 * Years of made-up fleets under several policies on the same draws, the planner among them: the judge of every change to
 * the engine.
 */
@NullMarked
package dev.injectorplanner.core.replay;

import org.jspecify.annotations.NullMarked;
