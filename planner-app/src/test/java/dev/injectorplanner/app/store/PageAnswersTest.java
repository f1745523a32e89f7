package dev.injectorplanner.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What every page asks of the store is asked once, until something is committed. */
class PageAnswersTest {
    private final AtomicInteger asked = new AtomicInteger();
    private Store store;
    private PageAnswers<String, Integer> answers;

    @BeforeEach
    void open(@TempDir Path folder) {
        store = Store.open(StoreSettings.embedded(folder.resolve("data")));
        answers = new PageAnswers<>(store.dataSource());
    }

    @AfterEach
    void close() {
        store.close();
    }

    private int onPage() throws Exception {
        AtomicInteger answer = new AtomicInteger();
        StoreLane.<RuntimeException>reading(() -> answer.set(answers.of("depots", key -> {
            store.countDepots(); // a page's transaction changes nothing
            return asked.incrementAndGet();
        })));
        return answer.get();
    }

    @Test
    void pages_ask_once() throws Exception {
        assertThat(onPage()).isEqualTo(1);
        assertThat(onPage()).isEqualTo(1);
    }

    @Test
    void a_commit_of_plain_sql_makes_them_ask_again() throws Exception {
        onPage();
        new StoreSql(store.dataSource())
                .inTransaction(
                        connection -> StoreSql.update(connection, "delete from site_setting where name = 'none'"));
        assertThat(onPage()).isEqualTo(2);
    }

    @Test
    void a_commit_of_entities_makes_them_ask_again() throws Exception {
        onPage();
        store.inTransaction(
                session -> session.createMutationQuery("delete from DepotRow").executeUpdate());
        assertThat(onPage()).isEqualTo(2);
    }

    @Test
    void a_commit_of_a_load_makes_them_ask_again() throws Exception {
        onPage();
        store.inJointTransaction((connection, writer) -> true);
        assertThat(onPage()).isEqualTo(2);
    }

    @Test
    void whoever_writes_asks_the_store() throws Exception {
        onPage();
        assertThat(answers.of("depots", key -> asked.incrementAndGet())).isEqualTo(2);
    }

    /** Asked before the commit, answered after it: such an answer must not be shown as the newest. */
    @Test
    void an_answer_that_a_commit_overtook_is_asked_again() throws Exception {
        StoreLane.<RuntimeException>reading(() -> answers.of("depots", key -> {
            Thread other = new Thread(() -> store.inTransaction(session -> 1));
            other.start();
            try {
                other.join();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
            return asked.incrementAndGet();
        }));
        assertThat(onPage()).isEqualTo(2);
    }
}
