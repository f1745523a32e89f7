package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.Bank;
import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Short lists as text in one column: {@code 1 3 5}, {@code MONDAY TUESDAY}, {@code left:1 3;right:2 4}. */
final class Texts {
    private Texts() {}

    static String numbers(Collection<Integer> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    static List<Integer> numbers(String text) {
        return text.isEmpty()
                ? List.of()
                : Arrays.stream(text.split(" ", -1)).map(Integer::valueOf).toList();
    }

    static String days(Set<DayOfWeek> days) {
        return days.stream().sorted().map(DayOfWeek::name).collect(Collectors.joining(" "));
    }

    static Set<DayOfWeek> days(String text) {
        return Arrays.stream(text.split(" ", -1))
                .map(DayOfWeek::valueOf)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(DayOfWeek.class)));
    }

    static String banks(List<Bank> banks) {
        return banks.stream()
                .map(bank -> bank.name() + ":" + numbers(bank.cylinders()))
                .collect(Collectors.joining(";"));
    }

    static List<Bank> banks(String text) {
        return Arrays.stream(text.split(";", -1)).map(Texts::bank).toList();
    }

    private static Bank bank(String text) {
        int colon = text.lastIndexOf(':');
        return new Bank(text.substring(0, colon), numbers(text.substring(colon + 1)));
    }
}
