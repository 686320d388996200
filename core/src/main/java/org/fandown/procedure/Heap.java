package org.fandown.procedure;

import java.util.Arrays;

/** Numbers, the least first; equal ones cannot be told apart. */
final class Heap {
    private long[] numbers = new long[1 << 10];
    private int size;

    boolean isEmpty() {
        return size == 0;
    }

    long least() {
        return numbers[0];
    }

    void add(long number) {
        if (size == numbers.length) {
            numbers = Arrays.copyOf(numbers, 2 * size);
        }
        int at = size++;
        while (at > 0 && numbers[(at - 1) / 2] > number) {
            numbers[at] = numbers[(at - 1) / 2];
            at = (at - 1) / 2;
        }
        numbers[at] = number;
    }

    long remove() {
        long least = numbers[0];
        long last = numbers[--size];
        int at = 0;
        int child = 1;
        while (child < size) {
            child += child + 1 < size && numbers[child + 1] < numbers[child] ? 1 : 0;
            if (numbers[child] >= last) {
                break;
            }
            numbers[at] = numbers[child];
            at = child;
            child = 2 * at + 1;
        }
        numbers[at] = last;
        return least;
    }
}
