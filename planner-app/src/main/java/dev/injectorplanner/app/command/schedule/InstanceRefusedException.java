package dev.injectorplanner.app.command.schedule;

import dev.injectorplanner.core.check.UserError;

/** An instance file that cannot be used: what is wrong, where, and how to fix it, in one sentence or two. */
final class InstanceRefusedException extends Exception implements UserError {
    private static final long serialVersionUID = 1L;

    InstanceRefusedException(String message) {
        super(message);
    }
}
