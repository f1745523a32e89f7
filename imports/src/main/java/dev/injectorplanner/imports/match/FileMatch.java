package dev.injectorplanner.imports.match;

import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.cell.Heading;
import dev.injectorplanner.imports.cell.NumberForm;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.codec.digest.DigestUtils;

/**
 * How the files of one source are read. A source is known by its set of headings.
 *
 * @param source name of the file that it was made from
 * @param table name of the table
 * @param columns what each heading means, in the order of the file
 * @param numbers which sign stands before the decimals; {@link NumberForm#UNSTATED}: no number can be read two ways
 * @param dates which of day and month stands first
 * @param century what two-digit years begin with, such as 20; 0: there are none
 * @param emptyWords words that mean an empty cell
 * @param ignored signs and units around numbers that mean nothing more, such as $ and km
 * @param fixed columns that the file does not have, with the value that holds for every row
 * @param asks what a person still has to say: {@code numbers}, {@code dates}, and with the heading behind it {@code
 *     column:} (found by its values only), {@code above:} (blank cells), {@code shortened:}; values say it themselves
 */
public record FileMatch(
        String source,
        String table,
        List<ColumnMatch> columns,
        NumberForm numbers,
        DateOrder dates,
        int century,
        List<String> emptyWords,
        List<String> ignored,
        Map<String, String> fixed,
        Set<String> asks) {
    /** Stands where a person must answer before the match can be used. */
    public static final String ASK = "ask";

    public FileMatch {
        columns = List.copyOf(columns);
        emptyWords = List.copyOf(emptyWords);
        ignored = List.copyOf(ignored);
        fixed = Map.copyOf(fixed);
        asks = Set.copyOf(asks);
    }

    /** What tells its source from all others. */
    public String key() {
        return keyOf(columns.stream().map(ColumnMatch::heading).toList());
    }

    /** What tells a source from all others: its headings, whatever their order, case and spacing. */
    public static String keyOf(List<String> headings) {
        return DigestUtils.sha256Hex(String.join("\n", plain(named(headings))));
    }

    /** How much of all headings two sources have in common, 0 to 1. */
    public double likeness(List<String> headings) {
        Set<String> here = plain(columns.stream().map(ColumnMatch::heading).toList());
        Set<String> there = plain(named(headings));
        Set<String> both = new HashSet<>(here);
        both.retainAll(there);
        int all = here.size() + there.size() - both.size();
        return all == 0 ? 0 : both.size() / (double) all;
    }

    /** Headings of other files of the source that this one does not know. */
    public List<String> unknownOf(List<String> headings) {
        Set<String> here = plain(columns.stream().map(ColumnMatch::heading).toList());
        return named(headings).stream()
                .filter(heading -> !here.contains(Heading.plain(heading)))
                .toList();
    }

    private static Set<String> plain(List<String> headings) {
        return headings.stream()
                .map(Heading::plain)
                .filter(each -> !each.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Headings that are not blank; a second one of the same words is told from the first by a number. */
    public static List<String> named(List<String> headings) {
        return numbered(headings).stream().filter(heading -> !heading.isBlank()).toList();
    }

    /** The same with blank ones in their places. */
    public static List<String> numbered(List<String> headings) {
        Map<String, Integer> seen = new HashMap<>();
        List<String> named = new ArrayList<>();
        for (String heading : headings) {
            String plain = Heading.plain(heading);
            int times = plain.isEmpty() || RefusalHeadings.isOne(heading) ? 1 : seen.merge(plain, 1, Integer::sum);
            String clean = plain.isEmpty() || RefusalHeadings.isOne(heading)
                    ? ""
                    : heading.strip().replaceAll("\\s+", " ");
            named.add(times == 1 ? clean : clean + " (" + times + ")");
        }
        return named;
    }

    private static String inWords(String ask) {
        int colon = ask.indexOf(':');
        String heading = " \"" + ask.substring(colon + 1) + "\"";
        return switch (colon < 0 ? "" : ask.substring(0, colon)) {
            case "column" -> "column" + heading;
            case "above" -> "blank cells of column" + heading;
            case "shortened" -> "shortened values of column" + heading;
            default -> ask;
        };
    }

    /** Whether a person still has to say something of a heading. */
    boolean asks(String what, ColumnMatch column) {
        return asks.contains(what + ":" + column.heading());
    }

    /** What a person must still say, in words; empty once it can be used. */
    public List<String> open() {
        List<String> open = new ArrayList<>();
        asks.stream().sorted().map(FileMatch::inWords).forEach(open::add);
        for (ColumnMatch column : columns) {
            if (column.column().equals(ASK)) {
                open.add("column \"" + column.heading() + "\"");
            }
            column.values().forEach((cell, word) -> {
                if (word.equals(ASK)) {
                    open.add("value \"" + cell + "\" of column \"" + column.heading() + "\"");
                }
            });
        }
        fixed.forEach((column, value) -> {
            if (value.equals(ASK)) {
                open.add("fixed " + column);
            }
        });
        return open;
    }
}
