package dev.injectorplanner.app.web.worklist;

import dev.injectorplanner.app.web.office.Address;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.units.SiteUnits;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What of the worklist is shown, and in what order: all of it stands in the page's address.
 *
 * @param set parameters that are set, by name
 */
public record WorklistQuery(Map<String, String> set) {
    /** Parameters that choose rows. */
    static final List<String> FILTERS =
            List.of("find", "depot", "group", "family", "state", "risk", "km", "faults", "over", "overdue");

    private static final Set<String> KNOWN = Set.of(
            "find", "depot", "group", "family", "state", "risk", "km", "faults", "over", "overdue", "sort", "page");

    public WorklistQuery {
        Map<String, String> kept = new TreeMap<>();
        set.forEach((name, value) -> {
            if (KNOWN.contains(name) && !value.isBlank()) {
                kept.put(name, value.strip());
            }
        });
        set = Map.copyOf(kept);
    }

    /** Of the part of an address after its question mark, as a saved view keeps it. */
    static WorklistQuery parse(String address) {
        Map<String, String> set = new LinkedHashMap<>();
        for (String pair : address.split("&")) {
            int at = pair.indexOf('=');
            if (at > 0) {
                set.put(
                        pair.substring(0, at),
                        java.net.URLDecoder.decode(pair.substring(at + 1), java.nio.charset.StandardCharsets.UTF_8));
            }
        }
        return new WorklistQuery(set);
    }

    public String get(String name) {
        return set.getOrDefault(name, "");
    }

    /** How many filters are set. */
    public long filters() {
        return FILTERS.stream().filter(set::containsKey).count();
    }

    /** Which page, from 1. */
    int page() {
        return (int) number("page").orElse(1.0).doubleValue();
    }

    Sort sort() {
        String asked = get("sort");
        return Arrays.stream(Sort.values())
                .filter(sort -> sort.key().equals(asked.replaceFirst("^-", "")))
                .findFirst()
                .orElse(Sort.CHANCE);
    }

    /** Whether the order is the other way round than is usual for the column. */
    boolean reversed() {
        return get("sort").startsWith("-");
    }

    /** The trucks that it asks for, in its order. */
    List<WorkTruck> of(List<WorkTruck> trucks, Set<String> found, SiteUnits units) {
        double risk = number("risk").orElse(-1.0) / 100;
        double km = units.toKm(number("km").orElse(-1.0));
        return trucks.stream()
                .filter(truck ->
                        is("depot", truck.depot()) && is("group", truck.group()) && is("family", truck.family()))
                .filter(truck -> is("state", truck.standing().key()))
                .filter(truck -> get("find").isEmpty() || found.contains(truck.truck()))
                .filter(truck -> get("faults").isEmpty() || truck.faults() > 0)
                .filter(truck -> get("overdue").isEmpty() || truck.overdue())
                .filter(truck -> get("over").isEmpty()
                        || truck.risk() != null && truck.risk().overLimit())
                .filter(truck ->
                        risk < 0 || truck.risk() != null && truck.risk().chance() > risk)
                .filter(truck -> km < 0
                        || truck.meters().sinceKm() != null && truck.meters().sinceKm() > km)
                .sorted(sort().order(reversed()))
                .toList();
    }

    private boolean is(String name, String value) {
        return get(name).isEmpty() || get(name).equals(value);
    }

    private Optional<Double> number(String name) {
        String text = get(name).replace(",", "");
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            double value = Double.parseDouble(text);
            if (value >= 0 && value < 1e9) {
                return Optional.of(value);
            }
        } catch (NumberFormatException e) {
            // told below, as one out of range
        }
        throw new InvalidValueException(name, text, "is not a number from 0", "write digits, such as 15");
    }

    /** The same with another value; an empty one takes it away. Anything but the page goes back to the first page. */
    public WorklistQuery with(String name, String value) {
        Map<String, String> other = new LinkedHashMap<>(set);
        other.remove("page");
        other.put(name, value);
        return new WorklistQuery(other);
    }

    /** What follows the question mark. */
    public String address() {
        List<String> pairs = new ArrayList<>();
        new TreeMap<>(set).forEach((name, value) -> pairs.add(name + "=" + Address.escaped(value)));
        return String.join("&", pairs);
    }

    public String link() {
        String address = address();
        return "/trucks" + (address.isEmpty() ? "" : "?" + address);
    }

    /** The filters in words, for a sheet's remark. */
    String words() {
        String chosen = FILTERS.stream()
                .filter(set::containsKey)
                .map(name -> name + " " + get(name))
                .collect(Collectors.joining(", "));
        return (chosen.isEmpty() ? "All trucks" : "Trucks with " + chosen) + "; sorted by " + sort().words()
                + (reversed() ? ", the other way round" : "");
    }
}
