package dev.injectorplanner.core.check;

/** A value that a record refuses: which field, what was there, why not, and how to fix it. */
public class InvalidValueException extends IllegalArgumentException implements UserError {
    private static final long serialVersionUID = 1L;

    private final String field;
    private final String value;
    private final String reason;
    private final String fix;

    /**
     * @param field the column's canonical name, such as {@code odometer_km}
     * @param value what was there, as a person would write it
     * @param reason why it is refused, without a full stop
     * @param fix what to do about it, without a full stop
     */
    public InvalidValueException(String field, Object value, String reason, String fix) {
        super(field + " \"" + value + "\": " + reason + ". Fix: " + fix + ".");
        this.field = field;
        this.value = String.valueOf(value);
        this.reason = reason;
        this.fix = fix;
    }

    public final String field() {
        return field;
    }

    public final String value() {
        return value;
    }

    public final String reason() {
        return reason;
    }

    public final String fix() {
        return fix;
    }
}
