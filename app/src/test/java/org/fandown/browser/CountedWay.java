package org.fandown.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.concurrent.atomic.AtomicLong;

/** A way to a server of this machine on which every byte that the server answers is counted. */
final class CountedWay implements AutoCloseable {
    private static final InetAddress HERE = InetAddress.getLoopbackAddress();

    private final ServerSocket door;
    private final int to;
    private final AtomicLong answered = new AtomicLong();

    /** Opens a way to a port. */
    CountedWay(int to) throws IOException {
        this.to = to;
        door = new ServerSocket(0, 50, HERE);
        begin(this::letIn);
    }

    /** The address of its near end, ending with a slash. */
    String address() {
        return "http://127.0.0.1:" + door.getLocalPort() + "/";
    }

    /** Bytes of all answers until now, with what goes before each. */
    long answered() {
        return answered.get();
    }

    private void letIn() throws IOException {
        while (!door.isClosed()) {
            Socket near = door.accept();
            Socket far = new Socket(HERE, to);
            begin(() -> carry(near, far, new AtomicLong()));
            begin(() -> carry(far, near, answered));
        }
    }

    private static void carry(Socket from, Socket onto, AtomicLong count) throws IOException {
        try (from;
                onto) {
            InputStream in = from.getInputStream();
            OutputStream out = onto.getOutputStream();
            byte[] some = new byte[8192];
            for (int n = in.read(some); n >= 0; n = in.read(some)) {
                count.addAndGet(n);
                out.write(some, 0, n);
            }
        }
    }

    private interface Work {
        void run() throws IOException;
    }

    private static void begin(Work work) {
        Thread thread =
                new Thread(
                        () -> {
                            try {
                                work.run();
                            } catch (IOException closed) {
                                // One end went away, as browsers and servers do.
                            }
                        });
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public void close() {
        try {
            door.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
