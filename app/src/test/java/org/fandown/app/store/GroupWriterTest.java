package org.fandown.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

class GroupWriterTest {
    private static final int THREADS = 40;
    private static final int BAD = -1;

    private final List<List<Integer>> transactions =
            Collections.synchronizedList(new ArrayList<>());
    private final CountDownLatch first = new CountDownLatch(1);

    /** The first transaction lasts until {@link #first} lets it go. */
    private List<String> write(List<Integer> items) {
        if (transactions.isEmpty()) {
            transactions.add(items);
            try {
                first.await();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        } else {
            transactions.add(items);
        }
        if (items.contains(BAD)) {
            throw new IllegalArgumentException("bad");
        }
        return items.stream().map(item -> "wrote " + item).toList();
    }

    @Test
    void those_who_wait_are_written_together_and_each_gets_its_own_answer() throws Exception {
        GroupWriter<Integer, String> writer = new GroupWriter<>(this::write);
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        List<Future<String>> answers = new ArrayList<>();
        for (int i = 0; i < THREADS; i++) {
            int item = i;
            answers.add(threads.submit(() -> writer.write(item)));
        }
        Thread.sleep(500);
        first.countDown();
        for (int i = 0; i < THREADS; i++) {
            assertThat(answers.get(i).get()).isEqualTo("wrote " + i);
        }
        threads.shutdown();
        assertThat(transactions.stream().mapToInt(List::size).sum()).isEqualTo(THREADS);
        assertThat(transactions).hasSizeLessThan(THREADS);
    }

    @Test
    void one_that_cannot_be_written_keeps_back_no_other() throws Exception {
        GroupWriter<Integer, String> writer = new GroupWriter<>(this::write);
        ExecutorService threads = Executors.newFixedThreadPool(3);
        Future<String> before = threads.submit(() -> writer.write(1));
        Thread.sleep(200);
        Future<String> bad = threads.submit(() -> writer.write(BAD));
        Future<String> good = threads.submit(() -> writer.write(2));
        Thread.sleep(200);
        first.countDown();
        assertThat(before.get()).isEqualTo("wrote 1");
        assertThat(good.get()).isEqualTo("wrote 2");
        assertThatThrownBy(bad::get).hasRootCauseMessage("bad");
        threads.shutdown();
    }
}
