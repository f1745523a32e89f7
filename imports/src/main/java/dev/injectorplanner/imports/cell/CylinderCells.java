package dev.injectorplanner.imports.cell;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.Bank;
import dev.injectorplanner.core.fleet.CylinderPick;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Lists of cylinders: all, ranges, firing orders and banks. */
public final class CylinderCells {
    /** The bank's name where a list of cylinders stands alone. */
    static final String ONE_BANK = "inline";

    private static final Pattern TO = Pattern.compile("([0-9])\\s*(?:-|\u2013|\\bto\\b)\\s*([0-9])");
    private static final Pattern ITEM = Pattern.compile("[0-9]{1,2}(?:-[0-9]{1,2})*");
    private static final Pattern PREFIX =
            Pattern.compile("(?i)^(?:cylinders?|cyls?\\.?|injectors?|inj\\.?|nos?\\.?|#)[ #:.]*(?=[0-9ab])");
    private static final Pattern EVERY =
            Pattern.compile("(?i)(?:all|(?:full |complete )?set of) +([0-9]{1,2})(?: +(?:cylinders|cyls?|injectors))?"
                    + "|all(?: +(?:cylinders|cyls?|injectors))?|(?:full |complete )?set|both banks");
    private static final Pattern BANK =
            Pattern.compile("(?i)([\\p{L}]+) +(?:hand +)?(?:bank|side)|bank +([0-9ab]|[\\p{L}]+)");
    private static final Map<String, String> SIDES =
            Map.of("lh", "left", "l", "left", "rh", "right", "r", "right", "a", "1", "b", "2", "inline", "inline");
    private static final Pattern SEQUENCE =
            Pattern.compile("[0-9]{1,2}(?:(?:\\s*[-\u2013,;/.+&]\\s*|\\s+)[0-9]{1,2})*");
    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,2}");
    private static final Pattern LISTED =
            Pattern.compile("[0-9]{1,2}(?:(?:[\\s,;/.&+\u2013-]+|\\s*to\\s*)[0-9]{1,2})*");
    private static final Pattern NAMED = Pattern.compile("([^:=]*\\S)\\s*[:=]\\s*(.+)");
    private static final Pattern NAME_FIRST = Pattern.compile("([^0-9:=]*[^0-9:=\\s])\\s+([0-9].*)");

    private CylinderCells() {}

    /** Cylinders in the order given; {@code all} gives an empty list. {@code 1-4} is a range, {@code 1-3-5} a list. */
    public static List<Integer> cylinders(String column, String text) {
        if (text.equalsIgnoreCase("all")) {
            return List.of();
        }
        List<Integer> listed = new ArrayList<>();
        String joined = TO.matcher(text).replaceAll("$1-$2");
        for (String item : joined.split("[\\s,;/.&+]+", -1)) {
            if (!ITEM.matcher(item).matches()) {
                throw unreadable(column, text, "write them as 1 2 3, 1-4 or all");
            }
            List<Integer> numbers = numbers(item);
            if (numbers.size() == 2 && numbers.get(0) > numbers.get(1)) {
                throw unreadable(column, text, "write a range with the lower number first, such as 1-4");
            }
            listed.addAll(
                    numbers.size() == 2
                            ? IntStream.rangeClosed(numbers.get(0), numbers.get(1))
                                    .boxed()
                                    .toList()
                            : numbers);
        }
        return listed;
    }

    /** Cylinders of a work order: {@code 3}, {@code Cyl 1-4}, {@code all}, {@code full set}, {@code left bank}, {@code bank 2}. */
    public static CylinderPick pick(String column, String text) {
        String plain = CellText.trimmed(PREFIX.matcher(text).replaceFirst(""));
        Matcher every = EVERY.matcher(plain);
        if (every.matches()) {
            String number = every.group(1);
            return number == null ? CylinderPick.ALL : CylinderPick.all(Integer.parseInt(number));
        }
        Matcher bank = BANK.matcher(plain);
        if (bank.matches()) {
            String name = bank.group(1) == null ? bank.group(2) : bank.group(1);
            return new CylinderPick(List.of(), SIDES.getOrDefault(name.toLowerCase(Locale.ROOT), name));
        }
        return new CylinderPick(cylinders(column, plain), "");
    }

    /** Whether a cell lists cylinders and one of them has a number: {@code 0}, {@code Cyl 0}, {@code 00}, {@code 0-3}. */
    public static boolean names(String text, int number) {
        String plain = CellText.trimmed(PREFIX.matcher(text).replaceFirst(""));
        return LISTED.matcher(plain).matches()
                && NUMBER.matcher(plain).results().anyMatch(found -> Integer.parseInt(found.group()) == number);
    }

    /**
     * A cell of a file that counts cylinders otherwise than the engine maker, in his numbers.
     *
     * @param words the number of the file and the maker's, such as 0 and 1
     */
    static String renumbered(String text, Map<String, String> words) {
        String plain = CellText.trimmed(PREFIX.matcher(text).replaceFirst(""));
        if (!LISTED.matcher(plain).matches()) {
            return text;
        }
        return NUMBER.matcher(plain).replaceAll(found -> {
            String number = String.valueOf(Integer.parseInt(found.group()));
            return words.getOrDefault(number, number);
        });
    }

    /** Cylinders one by one in the order given: {@code 1 8 4 3}, {@code 1-8-4-3}, {@code 1,8,4,3}. */
    public static List<Integer> sequence(String column, String text) {
        if (!SEQUENCE.matcher(text).matches()) {
            throw unreadable(column, text, "write them as 1 5 3 6 2 4");
        }
        return numbers(text);
    }

    private static List<Integer> numbers(String text) {
        return NUMBER.matcher(text)
                .results()
                .map(found -> Integer.valueOf(found.group()))
                .toList();
    }

    /** {@code left 1 3 5 7; right 2 4 6 8}, {@code left: 1,3,5,7 | right: 2,4,6,8}; a list alone is the one bank. */
    public static List<Bank> banks(String column, String text) {
        List<Bank> banks = new ArrayList<>();
        for (String part : text.split("[;|\\n]", -1)) {
            if (!part.isBlank()) {
                banks.add(bank(column, text, part.strip()));
            }
        }
        boolean oneNameTwice = banks.stream().map(Bank::name).distinct().count() < banks.size();
        if (oneNameTwice) {
            throw new InvalidValueException(
                    column, text, "gives two banks the same name", "name them, such as left 1 3 5 7; right 2 4 6 8");
        }
        return banks;
    }

    private static Bank bank(String column, String text, String part) {
        Matcher named = NAMED.matcher(part);
        if (named.matches()) {
            return new Bank(named.group(1), cylinders(column, named.group(2)));
        }
        Matcher nameFirst = NAME_FIRST.matcher(part);
        if (nameFirst.matches()) {
            return new Bank(nameFirst.group(1), cylinders(column, nameFirst.group(2)));
        }
        if (!Character.isDigit(part.charAt(0))) {
            throw unreadable(column, text, "write them as left 1 3 5 7; right 2 4 6 8");
        }
        return new Bank(ONE_BANK, cylinders(column, part));
    }

    private static InvalidValueException unreadable(String column, String text, String fix) {
        return new InvalidValueException(column, text, "is not a list of cylinders", fix);
    }

    static String write(List<Integer> cylinders) {
        return cylinders.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    static String writeOrAll(List<Integer> cylinders) {
        return cylinders.isEmpty() ? "all" : write(cylinders);
    }

    static String writeBanks(List<Bank> banks) {
        return banks.stream()
                .map(bank -> bank.name() + (bank.name().matches("[\\p{L} ]+") ? " " : ": ") + write(bank.cylinders()))
                .collect(Collectors.joining("; "));
    }
}
