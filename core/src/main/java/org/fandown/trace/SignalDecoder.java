package org.fandown.trace;

/**
 * Finds the signals in messages.
 *
 * <p>Messages of any source address are decoded: in recordings the pressures come from bodies and
 * cab controllers as well as from the pneumatic system. Several senders may send the same group
 * with different parts filled in, so merge what they say signal by signal. Other groups, among them
 * the vehicle identification number, are passed over.
 */
public final class SignalDecoder implements FrameListener {
    private static final Signal[] NONE = {};
    private static final Signal[] EBC1 = {Signal.PEDAL};
    private static final Signal[] EEC1 = {Signal.ENGINE_SPEED};
    private static final Signal[] AIR1 = {
        Signal.SUPPLY, Signal.PARKING, Signal.CIRCUIT_1, Signal.CIRCUIT_2
    };
    private static final Signal[] CCVS1 = {
        Signal.SPEED, Signal.PARKING_SWITCH, Signal.BRAKE_SWITCH
    };
    private static final Signal[] AMBIENT = {Signal.BAROMETER, Signal.AIR_TEMPERATURE};
    private static final Signal[] BRAKES = {Signal.APPLICATION, Signal.PRIMARY, Signal.SECONDARY};
    private static final int LAST_VALUE = 250;

    private final SignalListener listener;

    /**
     * Makes a decoder.
     *
     * @param listener who is told the signals
     */
    public SignalDecoder(SignalListener listener) {
        this.listener = listener;
    }

    @Override
    public void frame(CanFrame frame) {
        if (!frame.extended) {
            return;
        }
        for (Signal signal : signals(frame.group())) {
            decode(signal, frame);
        }
    }

    private static Signal[] signals(int group) {
        return switch (group) {
            case Signal.Group.EBC1 -> EBC1;
            case Signal.Group.EEC1 -> EEC1;
            case Signal.Group.AIR1 -> AIR1;
            case Signal.Group.CCVS1 -> CCVS1;
            case Signal.Group.AMBIENT -> AMBIENT;
            case Signal.Group.BRAKES -> BRAKES;
            default -> NONE;
        };
    }

    private void decode(Signal signal, CanFrame frame) {
        if (frame.length < signal.bytesNeeded()) {
            listener.absent(signal, frame, Absence.TOO_SHORT);
            return;
        }
        int raw = (int) (frame.data >>> signal.shift()) & ((1 << signal.bits()) - 1);
        int code = signal.bits() == 16 ? raw >>> 8 : raw;
        boolean flag = signal.bits() == 2;
        if (code <= (flag ? 1 : LAST_VALUE)) {
            listener.value(signal, frame, signal.scaled(raw));
        } else {
            listener.absent(signal, frame, flag ? ofFlag(code) : ofCode(code));
        }
    }

    private static Absence ofFlag(int code) {
        return code == 2 ? Absence.ERROR : Absence.NOT_AVAILABLE;
    }

    private static Absence ofCode(int code) {
        if (code == 255) {
            return Absence.NOT_AVAILABLE;
        }
        return code == 254 ? Absence.ERROR : Absence.RESERVED;
    }
}
