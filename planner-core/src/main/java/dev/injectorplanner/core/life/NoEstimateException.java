package dev.injectorplanner.core.life;

import dev.injectorplanner.core.check.UserError;

/** The records cannot say what was asked: what is missing, and what would fix it, in words. */
public final class NoEstimateException extends IllegalArgumentException implements UserError {
    private static final long serialVersionUID = 1L;

    private final String reason;
    private final String fix;

    /**
     * @param reason what the records lack, without a full stop
     * @param fix what to do about it, without a full stop
     */
    public NoEstimateException(String reason, String fix) {
        super(reason + ". Fix: " + fix + ".");
        this.reason = reason;
        this.fix = fix;
    }

    public String reason() {
        return reason;
    }

    public String fix() {
        return fix;
    }
}
