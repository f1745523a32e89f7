/** Signing in: who may go where, passwords, tokens, throttling, headers. */
@NullMarked
package dev.injectorplanner.app.security;

import org.jspecify.annotations.NullMarked;
