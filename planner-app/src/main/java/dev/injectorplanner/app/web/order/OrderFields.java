package dev.injectorplanner.app.web.order;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.imports.cell.NumberCells;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Fields of a form as they were sent, read with a sentence for who typed them. */
public final class OrderFields {
    private final Map<String, List<String>> sent;

    public OrderFields(Map<String, List<String>> sent) {
        this.sent = sent;
    }

    public List<String> all(String name) {
        return sent.getOrDefault(name, List.of());
    }

    public String text(String name) {
        List<String> there = all(name);
        return there.isEmpty() ? "" : there.get(0).strip();
    }

    public double number(String name) {
        return number(name, text(name));
    }

    public static double number(String name, String text) {
        return NumberCells.number(name, text.strip());
    }

    public LocalDate day(String name) {
        try {
            return LocalDate.parse(text(name));
        } catch (DateTimeParseException e) {
            throw new InvalidValueException(name, text(name), "is not a date", "write it as 2026-03-31");
        }
    }

    /** An amount, or null where the field is empty. */
    @Nullable
    public BigDecimal findMoney(String name) {
        String text = text(name);
        if (text.isEmpty()) {
            return null;
        }
        return NumberCells.decimal(name, text);
    }

    /** An amount that has to be there. */
    public BigDecimal money(String name) {
        BigDecimal amount = findMoney(name);
        if (amount == null) {
            throw new InvalidValueException(name, "", "is empty", "enter an amount such as 480.00, or 0");
        }
        return amount;
    }

    /** Words parted by blanks, commas or lines. */
    public List<String> words(String name) {
        return java.util.Arrays.stream(text(name).split("[\\s,;]+"))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    /** A value of a list of names. */
    public <E extends Enum<E>> E constant(Class<E> type, String name) {
        try {
            return Enum.valueOf(type, text(name));
        } catch (IllegalArgumentException e) {
            throw new InvalidValueException(name, text(name), "is not an allowed value", "choose from the page");
        }
    }
}
