package org.fandown.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Puts the vehicle identification number together from the messages of a network.
 *
 * <p>It is longer than a message, so it is announced to all (group 60416, first byte 32: number of
 * bytes, number of packets, and the group that is sent, 65260) and then comes in packets of seven
 * bytes (group 60160) that begin with their number. A packet that is missing makes all of it void.
 *
 * <p><b>Source.</b> Group, name and the star at the end are those of an open restatement of SAE
 * J1939; the layout of announcement and packets is from memory of SAE J1939-21, which was not read.
 */
final class VinReader {
    private static final int ANNOUNCEMENT = 60416;
    private static final int PACKET = 60160;
    private static final int TO_ALL = 32;
    private static final int VIN = 65260;
    private static final int BYTES = 8;
    private static final int IN_PACKET = 7;

    /** No number is longer, with its star. */
    private static final int LONGEST = 40;

    private static final int SOURCES = 256;
    private static final int MOST = 8;
    private static final byte STAR = '*';

    private final @Nullable Sending[] sendings = new @Nullable Sending[SOURCES];
    private final Map<String, Integer> found = new TreeMap<>();

    /** One number on its way. */
    private static final class Sending {
        private final byte[] bytes;
        private int packets;

        Sending(int size) {
            bytes = new byte[size];
        }
    }

    void frame(CanFrame frame) {
        if (!frame.isExtended() || frame.length() < BYTES) {
            return;
        }
        int group = frame.group();
        if (group == ANNOUNCEMENT) {
            announced(frame);
        } else if (group == PACKET) {
            packet(frame);
        }
    }

    private void announced(CanFrame frame) {
        if (frame.dataByte(1) != TO_ALL) {
            return;
        }
        int sent = frame.dataByte(6) | frame.dataByte(7) << 8 | frame.dataByte(8) << 16;
        int size = frame.dataByte(2) | frame.dataByte(3) << 8;
        boolean vin = sent == VIN && size > 1 && size <= LONGEST;
        sendings[frame.source()] = vin ? new Sending(size) : null;
    }

    private void packet(CanFrame frame) {
        Sending sending = sendings[frame.source()];
        if (sending == null) {
            return;
        }
        if (frame.dataByte(1) != sending.packets + 1) {
            sendings[frame.source()] = null;
            return;
        }
        int from = sending.packets * IN_PACKET;
        for (int i = 0; i < IN_PACKET && from + i < sending.bytes.length; i++) {
            sending.bytes[from + i] = (byte) frame.dataByte(i + 2);
        }
        sending.packets++;
        if (sending.packets * IN_PACKET >= sending.bytes.length) {
            sendings[frame.source()] = null;
            complete(sending.bytes, frame.source());
        }
    }

    private void complete(byte[] bytes, int source) {
        StringBuilder text = new StringBuilder();
        for (byte b : bytes) {
            if (b == STAR) {
                break;
            }
            if (b <= ' ' || b > '~') {
                return;
            }
            text.append((char) b);
        }
        if (text.length() > 0 && found.size() < MOST) {
            found.putIfAbsent(text.toString(), source);
        }
    }

    List<VehicleNumber> found() {
        List<VehicleNumber> numbers = new ArrayList<>();
        found.forEach((text, source) -> numbers.add(new VehicleNumber(text, source)));
        return numbers;
    }
}
