package org.fandown.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

class GrowingWaitTest {
    private final AtomicReference<Instant> now = new AtomicReference<>(Instant.EPOCH);
    private final GrowingWait wait = new GrowingWait(3, now::get);

    private void after(Duration time) {
        now.set(now.get().plus(time));
    }

    @Test
    void some_tries_are_free_and_then_each_has_to_wait_twice_as_long() {
        assertThat(wait.begin("a")).isZero();
        assertThat(wait.begin("a")).isZero();
        assertThat(wait.begin("a")).isZero();
        assertThat(wait.begin("a")).isEqualTo(1000);
        assertThat(wait.begin("b")).as("another is free").isZero();
        after(Duration.ofMillis(999));
        assertThat(wait.begin("a")).isEqualTo(1);
        after(Duration.ofMillis(1));
        assertThat(wait.begin("a")).isZero();
        assertThat(wait.begin("a")).isEqualTo(2000);
        after(Duration.ofSeconds(2));
        assertThat(wait.begin("a")).isZero();
        assertThat(wait.begin("a")).isEqualTo(4000);
    }

    @Test
    void wait_has_an_end_and_all_is_forgotten_after_an_hour() {
        for (int i = 0; i < 100; i++) {
            after(Duration.ofMillis(wait.begin("a")));
        }
        wait.begin("a");
        assertThat(wait.begin("a")).isEqualTo(300_000);
        after(Duration.ofMinutes(61));
        assertThat(wait.begin("a")).isZero();
        assertThat(wait.begin("a")).isZero();
    }

    @Test
    void success_forgets_or_takes_back_one() {
        for (int i = 0; i < 3; i++) {
            wait.begin("a");
            wait.begin("b");
        }
        wait.forget("a");
        assertThat(wait.begin("a")).isZero();
        wait.takeBack("b");
        assertThat(wait.begin("b")).isZero();
        assertThat(wait.begin("b")).isEqualTo(1000);
    }

    @Test
    void no_more_than_ten_thousand_are_remembered() {
        Recent<String> recent = new Recent<>();
        for (int i = 0; i < 10_002; i++) {
            recent.put("key " + i, "");
            recent.get("key 0");
        }
        assertThat(recent).hasSize(10_000).containsKey("key 0").doesNotContainKey("key 1");
    }

    @Test
    void pace_lets_many_at_once_and_then_so_many_a_second() {
        Pace pace = new Pace(5, 2, now::get);
        for (int i = 0; i < 5; i++) {
            assertThat(pace.lets("a")).isTrue();
        }
        assertThat(pace.lets("a")).isFalse();
        assertThat(pace.lets("b")).isTrue();
        after(Duration.ofMillis(499));
        assertThat(pace.lets("a")).isFalse();
        after(Duration.ofMillis(1));
        assertThat(pace.lets("a")).isTrue();
        assertThat(pace.lets("a")).isFalse();
        after(Duration.ofMinutes(1));
        for (int i = 0; i < 5; i++) {
            assertThat(pace.lets("a")).isTrue();
        }
        assertThat(pace.lets("a")).isFalse();
    }
}
