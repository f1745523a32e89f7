package dev.injectorplanner.imports;

import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Which table a file or sheet holds, by its name or by its headings. */
public final class TableFinder {
    private TableFinder() {}

    /**
     * By a name such as {@code trucks}, {@code trucks-2026}, {@code Trucks 2}: the one table whose name stands in it.
     *
     * @return null where none or more than one does
     */
    public static @Nullable Table<?> byName(String name) {
        List<String> words = words(name);
        Table<?> whole = Tables.find(name).orElse(null);
        if (whole != null) {
            return whole;
        }
        List<Table<?>> found = new ArrayList<>();
        for (int at = 0; at < words.size(); at++) {
            Table<?> longest = longestAt(words, at);
            if (longest != null && !found.contains(longest)) {
                found.add(longest);
                at += words(longest.name()).size() - 1;
            }
        }
        return found.size() == 1 ? found.get(0) : null;
    }

    /** By the name of a file without its ending. */
    public static @Nullable Table<?> byFileName(Path file) {
        String name = FileRefusedException.nameOf(file);
        int dot = name.lastIndexOf('.');
        return byName(dot > 0 ? name.substring(0, dot) : name);
    }

    private static @Nullable Table<?> longestAt(List<String> words, int at) {
        Table<?> longest = null;
        int most = 0;
        for (Table<?> table : Tables.ALL) {
            List<String> name = words(table.name());
            if (name.size() > most
                    && at + name.size() <= words.size()
                    && words.subList(at, at + name.size()).equals(name)) {
                longest = table;
                most = name.size();
            }
        }
        return longest;
    }

    private static List<String> words(String name) {
        return Arrays.stream(name.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    /** The one table that has all its required columns among the headings; of several, the one that knows them all. */
    static @Nullable Table<?> byHeadings(List<String> headings) {
        List<Table<?>> fitting = new ArrayList<>();
        List<Table<?>> knowingAll = new ArrayList<>();
        for (Table<?> table : Tables.ALL) {
            HeadingMatch<?> match = new HeadingMatch<>(table, headings, DateOrder.UNSTATED);
            if (match.missing().isEmpty()) {
                fitting.add(table);
                if (match.unknown().isEmpty()) {
                    knowingAll.add(table);
                }
            }
        }
        if (fitting.size() == 1) {
            return fitting.get(0);
        }
        return knowingAll.size() == 1 ? knowingAll.get(0) : null;
    }
}
