/** Mail: recipients, an outbox that outlives a server that is down, and sending. */
@NullMarked
package dev.injectorplanner.app.mail;

import org.jspecify.annotations.NullMarked;
