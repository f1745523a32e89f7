package dev.injectorplanner.app.web.download;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.reflect.Proxy;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.ui.ConcurrentModel;
import org.springframework.ui.Model;

/** A file is made once beside the pages; who asks waits a little, and is told how far it is. */
@Timeout(60)
class DownloadsTest {
    private final Downloads impatient = new Downloads(Duration.ofMillis(20));
    private final Downloads patient = new Downloads(Duration.ofSeconds(50));
    private final CountDownLatch go = new CountDownLatch(1);

    @AfterEach
    void close() {
        go.countDown();
        impatient.close();
        patient.close();
    }

    private static void write(OutputStream out) throws IOException {
        out.write(new byte[] {1, 2, 3});
    }

    private void held(Download progress, OutputStream out) throws IOException {
        progress.step("writing the workbook");
        try {
            go.await();
        } catch (InterruptedException e) {
            throw new IOException(e);
        }
        write(out);
    }

    @Test
    void a_quick_file_comes_at_once() {
        assertThat(patient.find(patient.ask("a", (progress, out) -> write(out))))
                .contains(new byte[] {1, 2, 3});
    }

    @Test
    void a_slow_file_is_made_once_and_fetched_by_all_who_asked() throws Exception {
        AtomicInteger made = new AtomicInteger();
        Downloads.Maker slow = (progress, out) -> {
            made.incrementAndGet();
            held(progress, out);
        };
        Download first = impatient.ask("a", slow);
        Download other = impatient.ask("b", slow);
        while (first.progress().startsWith("waiting")) {
            Thread.onSpinWait();
        }
        assertThat(impatient.find(first)).isEmpty();
        assertThat(other.progress()).isEqualTo("waiting for other files to be finished");
        assertThat(impatient.ask("a", slow)).isSameAs(first);
        go.countDown();
        assertThat(first.find(Duration.ofSeconds(50))).isPresent();
        assertThat(other.find(Duration.ofSeconds(50))).isPresent();
        assertThat(impatient.find(impatient.ask("a", slow))).contains(new byte[] {1, 2, 3});
        assertThat(made).hasValue(2);
    }

    @Test
    void who_does_not_wait_gets_a_page_that_asks_again_by_itself_then_the_file() throws Exception {
        List<String> told = new ArrayList<>();
        HttpServletResponse response = (HttpServletResponse) Proxy.newProxyInstance(
                getClass().getClassLoader(), new Class<?>[] {HttpServletResponse.class}, (proxy, method, values) -> {
                    told.add(method.getName() + Arrays.toString(values));
                    return null;
                });
        Model model = new ConcurrentModel();
        FileOffer offer = FileOffer.pdf("sheet of T 1.pdf", "/bay/T%201");
        assertThat(impatient.answer("a", this::held, offer, response, model)).isEqualTo("download-wait");
        assertThat(told).containsExactly("setStatus[202]", "setHeader[Refresh, 2]");
        assertThat(model.getAttribute("offer")).isEqualTo(offer);
        go.countDown();
        impatient.ask("a", this::held).find(Duration.ofSeconds(50));

        ResponseEntity<?> file = (ResponseEntity<?>) impatient.answer("a", this::held, offer, response, model);
        assertThat(file.getBody()).isEqualTo(new byte[] {1, 2, 3});
        assertThat(file.getHeaders().getContentType()).isEqualTo(MediaType.APPLICATION_PDF);
        assertThat(file.getHeaders().getContentDisposition().getFilename()).isEqualTo("sheet_of_T_1.pdf");
    }

    @Test
    void what_went_wrong_is_told_and_the_next_one_has_it_made_again() {
        Download broken = patient.ask("a", (progress, out) -> {
            throw new IllegalStateException("no fleet");
        });
        assertThatThrownBy(() -> patient.find(broken)).hasMessage("no fleet");
        assertThat(patient.find(patient.ask("a", (progress, out) -> write(out))))
                .isPresent();
    }

    @Test
    void too_many_at_a_time_are_refused_with_what_to_do() {
        List<Download> queued = new ArrayList<>();
        assertThatThrownBy(() -> {
                    for (int i = 0; i < 100; i++) {
                        queued.add(impatient.ask(i, this::held));
                    }
                })
                .isInstanceOf(TooManyDownloadsException.class)
                .hasMessageContaining("Fix: wait a minute");
        assertThat(queued).hasSizeBetween(20, 21);
    }
}
