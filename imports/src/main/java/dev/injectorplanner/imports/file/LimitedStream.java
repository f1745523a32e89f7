package dev.injectorplanner.imports.file;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Stops a part of a workbook that unpacks to more than it may. */
final class LimitedStream extends FilterInputStream {
    private final long most;
    private long read;

    LimitedStream(InputStream in, long most) {
        super(in);
        this.most = most;
    }

    @Override
    public int read() throws IOException {
        int one = super.read();
        count(one < 0 ? 0 : 1);
        return one;
    }

    @Override
    public int read(byte[] to, int from, int length) throws IOException {
        int count = super.read(to, from, length);
        count(Math.max(count, 0));
        return count;
    }

    private void count(int bytes) throws IOException {
        read += bytes;
        if (read > most) {
            throw new TooLarge(most);
        }
    }

    /** More than the limit came out. */
    static final class TooLarge extends IOException {
        private static final long serialVersionUID = 1L;

        TooLarge(long most) {
            super("unpacks to more than " + most + " bytes");
        }
    }
}
