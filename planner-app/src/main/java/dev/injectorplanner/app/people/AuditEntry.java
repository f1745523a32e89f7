package dev.injectorplanner.app.people;

import java.time.Instant;

/**
 * One change.
 *
 * @param id number, growing with time
 * @param at when
 * @param who a person's name, a token's, or that of who typed a command
 * @param what what was done, in two or three words: {@code hold a truck}
 * @param subject what it was done to: a truck, a person, a file
 * @param before what stood there, or empty
 * @param after the current value, or empty
 */
public record AuditEntry(long id, Instant at, String who, String what, String subject, String before, String after) {}
