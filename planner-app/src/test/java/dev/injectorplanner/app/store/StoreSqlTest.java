package dev.injectorplanner.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.app.testkit.Database;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Work on the store is whole or not at all, whatever ends it. */
class StoreSqlTest {
    @ParameterizedTest
    @EnumSource(Database.class)
    void an_error_leaves_no_half_of_it(Database database) {
        StoreSql sql = new StoreSql(database.empty().dataSource());
        String count = "select turn from settings_gate where id = 1";
        long before = sql.list(count, row -> row.getLong(1)).get(0);
        assertThatThrownBy(() -> sql.inTransaction(connection -> {
                    StoreSql.update(connection, "update settings_gate set turn = turn + 1 where id = 1");
                    throw new OutOfMemoryError("planted");
                }))
                .isInstanceOf(OutOfMemoryError.class);
        assertThat(sql.list(count, row -> row.getLong(1)).get(0)).isEqualTo(before);
    }
}
