package org.fandown.app.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Objects;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BiConsumer;
import org.fandown.document.DocumentException;
import org.fandown.trace.LogReader;
import org.jspecify.annotations.Nullable;

/**
 * Reads a log while it grows: a file, which is looked at ten times a second, or standard input.
 *
 * <p>A file that is cut or replaced by a new one of its name is read on from its new beginning, and
 * that is said. Memory does not grow with the length of the log.
 */
public final class FollowedLog implements AutoCloseable {
    /** How a log that was followed comes to its end. */
    public enum End {
        /** It goes on. */
        NONE,
        /** Whoever wrote to standard input has closed it. */
        INPUT_ENDED,
        /** The file did not grow for the time allowed. */
        QUIET
    }

    private static final int PIECE = 1 << 16;
    private static final int PIECES = 16;
    private static final long POLL_MILLIS = 100;

    private final Source source;
    private final double quiet;
    private final byte[] piece = new byte[PIECE];
    private long grew = System.nanoTime();

    /** Where bytes come from. */
    private interface Source extends AutoCloseable {
        /** Waits a little for bytes; gives their number, 0 if none came, -1 at the end. */
        int next(byte[] into) throws IOException, InterruptedException;

        @Override
        void close() throws IOException;
    }

    /**
     * Begins to follow.
     *
     * @param name the name of the file; {@value LogFiles#STANDARD_INPUT} for standard input
     * @param quiet after how many seconds without a new byte it ends; infinite for never
     * @param said is told of what happens to the file: a word for it, and a sentence
     * @throws DocumentException if the file is absent, a directory or not readable
     */
    public FollowedLog(String name, double quiet, BiConsumer<String, String> said) {
        this.quiet = quiet;
        this.source = source(name, said);
    }

    private static Source source(String name, BiConsumer<String, String> said) {
        try {
            if (name.equals(LogFiles.STANDARD_INPUT)) {
                return new Stream(System.in);
            }
            Path path = LogFiles.path(name);
            InputStream in = LogFiles.open(name);
            if (!Files.isRegularFile(path)) {
                return new Stream(in);
            }
            in.close();
            return new Growing(path, said);
        } catch (IOException e) {
            throw LogFiles.refusal(name, e);
        }
    }

    /**
     * Gives a reader what has come since the last call, after waiting a little for it.
     *
     * @throws DocumentException if the log cannot be read on, or the reader refuses it
     */
    public End next(String name, LogReader reader) {
        try {
            int count = source.next(piece);
            if (count > 0) {
                grew = System.nanoTime();
                reader.accept(piece, 0, count);
                return End.NONE;
            }
            if (count < 0) {
                return End.INPUT_ENDED;
            }
            return (System.nanoTime() - grew) / 1e9 >= quiet ? End.QUIET : End.NONE;
        } catch (IOException e) {
            throw LogFiles.refusal(name, e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return End.INPUT_ENDED;
        }
    }

    @Override
    public void close() {
        try {
            source.close();
        } catch (IOException e) {
            // Everything was read from it that was wanted.
        }
    }

    /**
     * Standard input or a pipe, read by a thread of its own, since a read there cannot be ended.
     */
    private static final class Stream implements Source {
        private static final byte[] END = {};

        private final BlockingQueue<byte[]> pieces = new ArrayBlockingQueue<>(PIECES);
        private volatile @Nullable IOException failure;

        Stream(InputStream in) {
            Thread reader = new Thread(() -> read(in), "standard input");
            reader.setDaemon(true);
            reader.start();
        }

        private void read(InputStream in) {
            byte[] buffer = new byte[PIECE];
            try {
                for (int count = in.read(buffer); count >= 0; count = in.read(buffer)) {
                    if (count > 0) {
                        pieces.put(java.util.Arrays.copyOf(buffer, count));
                    }
                }
                pieces.put(END);
            } catch (IOException e) {
                failure = e;
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }

        @Override
        public int next(byte[] into) throws IOException, InterruptedException {
            byte[] next = pieces.poll(POLL_MILLIS, TimeUnit.MILLISECONDS);
            if (next == null) {
                IOException failed = failure;
                if (failed != null) {
                    throw failed;
                }
                return 0;
            }
            if (next.length == 0) {
                return -1;
            }
            System.arraycopy(next, 0, into, 0, next.length);
            return next.length;
        }

        @Override
        public void close() {
            // The thread ends with the program or with its input.
        }
    }

    /** A file that grows. */
    private static final class Growing implements Source {
        private final Path path;
        private final BiConsumer<String, String> said;
        private SeekableByteChannel channel;
        private @Nullable Object key;
        private boolean gone;
        private boolean lineBegun;

        Growing(Path path, BiConsumer<String, String> said) throws IOException {
            this.path = path;
            this.said = said;
            channel = Files.newByteChannel(path);
            key = attributes().fileKey();
        }

        private BasicFileAttributes attributes() throws IOException {
            return Files.readAttributes(path, BasicFileAttributes.class);
        }

        @Override
        public int next(byte[] into) throws IOException, InterruptedException {
            int count = channel.read(ByteBuffer.wrap(into));
            if (count > 0) {
                lineBegun = into[count - 1] != '\n';
                return count;
            }
            if (beganAnew() && lineBegun) {
                lineBegun = false;
                into[0] = '\n';
                return 1;
            }
            Thread.sleep(POLL_MILLIS);
            return 0;
        }

        private boolean beganAnew() throws IOException {
            BasicFileAttributes now;
            try {
                now = attributes();
            } catch (NoSuchFileException e) {
                if (!gone) {
                    gone = true;
                    said.accept(
                            "file-gone",
                            "The file is gone; waiting for a new one of its name. End with"
                                    + " Ctrl-C.");
                }
                return false;
            }
            boolean replaced = gone || !Objects.equals(now.fileKey(), key);
            if (!replaced && now.size() >= channel.position()) {
                return false;
            }
            if (replaced) {
                channel.close();
                channel = Files.newByteChannel(path);
                key = now.fileKey();
                gone = false;
                said.accept(
                        "file-replaced",
                        "A new file has taken the place of the log; going on from its beginning.");
            } else {
                channel.position(0);
                said.accept("file-cut", "The file was cut; going on from its new beginning.");
            }
            return true;
        }

        @Override
        public void close() throws IOException {
            channel.close();
        }
    }
}
