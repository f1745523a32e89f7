package dev.injectorplanner.core.check;

/** A value that a record refuses: which field, what was there, why not, and how to mend it. */
public final class InvalidValueException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String field;
    private final String value;
    private final String reason;
    private final String mend;

    /**
     * @param field the column's canonical name, such as {@code odometer_km}
     * @param value what was there, as a person would write it
     * @param reason why it is refused, without a full stop
     * @param mend what to do about it, without a full stop
     */
    public InvalidValueException(String field, Object value, String reason, String mend) {
        super(field + " \"" + value + "\": " + reason + ". Mend: " + mend + ".");
        this.field = field;
        this.value = String.valueOf(value);
        this.reason = reason;
        this.mend = mend;
    }

    public String field() {
        return field;
    }

    public String value() {
        return value;
    }

    public String reason() {
        return reason;
    }

    public String mend() {
        return mend;
    }
}
