package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.entry.EntryProblem;
import dev.injectorplanner.core.units.SiteUnits;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A form as it stands: what was typed, ticked and chosen, and what is wrong with it. It is shown again as it was. */
public final class FormState {
    private final Map<String, List<String>> values = new LinkedHashMap<>();
    private final Map<String, String> wrong = new LinkedHashMap<>();

    FormState() {}

    FormState(Map<String, List<String>> sent) {
        sent.forEach((name, list) -> values.put(name, List.copyOf(list)));
    }

    void put(String name, @Nullable Object value) {
        if (value != null) {
            List<String> list = new ArrayList<>(values.getOrDefault(name, List.of()));
            list.add(String.valueOf(value));
            values.put(name, list);
        }
    }

    void set(String name, String value) {
        values.put(name, List.of(value));
    }

    void clear(String name) {
        values.remove(name);
    }

    /** What was typed, or an empty text. */
    public String text(String name) {
        List<String> there = values.getOrDefault(name, List.of());
        return there.isEmpty() ? "" : there.get(0);
    }

    /** Whether a box was ticked, or a choice made, with that value. */
    public boolean has(String name, String value) {
        return values.getOrDefault(name, List.of()).contains(value);
    }

    /** Whether the form had such a field, be it empty. */
    public boolean given(String name) {
        return values.containsKey(name);
    }

    List<String> all(String name) {
        return values.getOrDefault(name, List.of());
    }

    void wrong(EntryProblem problem) {
        wrong.putIfAbsent(problem.field(), problem.words());
    }

    /** The same with a sentence that speaks of km turned into the unit of the form. */
    void wrong(EntryProblem problem, SiteUnits units) {
        wrong(new EntryProblem(problem.field(), units.sentence(problem.words())));
    }

    /** The sentence at a field, or null. */
    public @Nullable String wrongAt(String name) {
        return wrong.get(name);
    }

    /** Whether something is wrong in a field whose name begins so. */
    public boolean wrongWithin(String prefix) {
        return wrong.keySet().stream().anyMatch(name -> name.startsWith(prefix));
    }

    /** All that is wrong, by field. */
    public Map<String, String> allWrong() {
        return wrong;
    }
}
