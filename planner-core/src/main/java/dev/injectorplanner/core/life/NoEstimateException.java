package dev.injectorplanner.core.life;

/** The records cannot say what was asked: what is missing, and what would mend it, in words. */
public final class NoEstimateException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String reason;
    private final String mend;

    /**
     * @param reason what the records lack, without a full stop
     * @param mend what to do about it, without a full stop
     */
    public NoEstimateException(String reason, String mend) {
        super(reason + ". Mend: " + mend + ".");
        this.reason = reason;
        this.mend = mend;
    }

    public String reason() {
        return reason;
    }

    public String mend() {
        return mend;
    }
}
