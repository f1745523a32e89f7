package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.ShopRecords;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Merges every table of a snapshot, what others refer to first. */
public final class FleetMerge {
    private FleetMerge() {}

    public static List<Change> into(StoreWriter writer, FleetSnapshot fleet) {
        Map<Class<?>, List<?>> tables = new HashMap<>();
        Arrays.stream(FleetSnapshot.class.getRecordComponents())
                .filter(component -> component.getType() == List.class)
                .forEach(component -> tables.put(rowType(component), rows(component, fleet)));
        Arrays.stream(ShopRecords.class.getRecordComponents())
                .filter(component -> !component.getName().equals("spares")) // no table
                .forEach(component -> tables.put(rowType(component), rows(component, fleet.shop())));
        List<Change> changes = new ArrayList<>();
        StoredTables.ALL.forEach(table -> changes.addAll(merge(writer, table.type(), tables)));
        return changes;
    }

    @SuppressWarnings("unchecked")
    private static <R> List<Change> merge(StoreWriter writer, Class<R> type, Map<Class<?>, List<?>> tables) {
        return writer.merge(type, (List<R>) tables.get(type), true);
    }

    private static Class<?> rowType(RecordComponent component) {
        return (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
    }

    private static List<?> rows(RecordComponent component, Object fleet) {
        try {
            return (List<?>) component.getAccessor().invoke(fleet);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
