package dev.injectorplanner.app.web.guard;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BodySlotsTest {
    private final BodySlots slots = new BodySlots(3, 2);

    @Test
    void an_address_has_its_share_and_no_more() {
        assertThat(slots.take("a")).isTrue();
        assertThat(slots.take("a")).isTrue();
        assertThat(slots.take("a")).isFalse();
        assertThat(slots.take("b")).isTrue();
        assertThat(slots.take("c")).as("all are taken").isFalse();
        slots.giveBack("a");
        assertThat(slots.take("c")).isTrue();
        slots.giveBack("c");
        assertThat(slots.take("a")).isTrue();
        assertThat(slots.take("a")).isFalse();
    }
}
