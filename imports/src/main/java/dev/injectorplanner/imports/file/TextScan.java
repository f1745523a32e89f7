package dev.injectorplanner.imports.file;

import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Goes through the bytes of a text file once, without keeping them: is it UTF-8, else can it be Windows-1252, does it
 * hold bytes that no text has, is a line too long.
 */
public final class TextScan {
    /** The longest line that is taken, bytes. */
    public static final int LONGEST_LINE = 1 << 20;

    private static final int BUFFER = 1 << 16;

    private final Path file;
    private final CharsetDecoder utf8 = StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    private final CharBuffer thrownAway = CharBuffer.allocate(BUFFER + 8);
    private final ByteBuffer bytes = ByteBuffer.allocate(BUFFER);

    private boolean isUtf8 = true;
    private boolean hasMark;
    private long line = 1;
    private long firstLineNotUtf8;
    private long lineOfUndefinedByte;
    private int undefinedByte;
    private int lineLength;
    private boolean afterReturn;

    private TextScan(Path file) {
        this.file = file;
    }

    /** @throws FileRefusedException if the file is no text that can be read */
    public static TextScan of(Path file) {
        TextScan scan = new TextScan(file);
        try (InputStream in = Files.newInputStream(file)) {
            scan.run(in);
        } catch (IOException e) {
            throw new FileRefusedException(file, "cannot be read to its end", "check the disk, or copy it again", e);
        }
        return scan;
    }

    Charset charset() {
        return isUtf8 ? StandardCharsets.UTF_8 : Charset.forName("windows-1252");
    }

    /** Whether the file starts with the three bytes that mark UTF-8. */
    boolean hasMark() {
        return hasMark;
    }

    /** The first line with a byte that is not UTF-8; 0 if all is. */
    public long firstLineNotUtf8() {
        return firstLineNotUtf8;
    }

    private void run(InputStream in) throws IOException {
        byte[] array = bytes.array();
        boolean first = true;
        int read = in.readNBytes(array, bytes.position(), bytes.remaining());
        while (read > 0) {
            int from = bytes.position();
            if (first) {
                hasMark = read >= 3
                        && (array[0] & 0xFF) == 0xEF
                        && (array[1] & 0xFF) == 0xBB
                        && (array[2] & 0xFF) == 0xBF;
                first = false;
            }
            long lineBefore = line;
            look(array, from, from + read);
            bytes.position(from + read).flip();
            decode(lineBefore, false);
            read = in.readNBytes(array, bytes.position(), bytes.remaining());
        }
        bytes.flip();
        decode(line, true);
        if (!isUtf8 && lineOfUndefinedByte > 0) {
            throw new FileRefusedException(
                    file,
                    String.format(
                            "line %d holds a byte (%02X) that is text neither in UTF-8 nor in Windows-1252",
                            lineOfUndefinedByte, undefinedByte),
                    "save it as UTF-8");
        }
    }

    private void decode(long lineBefore, boolean last) {
        if (!isUtf8) {
            bytes.clear();
            return;
        }
        thrownAway.clear();
        if (utf8.decode(bytes, thrownAway, last).isError()) {
            isUtf8 = false;
            firstLineNotUtf8 = lineBefore + newLines(bytes.array(), bytes.position());
            bytes.clear();
        } else {
            bytes.compact();
        }
    }

    private static long newLines(byte[] array, int to) {
        long count = 0;
        for (int i = 0; i < to; i++) {
            boolean returnAlone = array[i] == '\r' && !(i + 1 < array.length && array[i + 1] == '\n');
            count += array[i] == '\n' || returnAlone ? 1 : 0;
        }
        return count;
    }

    private void look(byte[] array, int from, int to) {
        for (int i = from; i < to; i++) {
            int b = array[i] & 0xFF;
            if (b == '\n') {
                line += afterReturn ? 0 : 1;
                lineLength = 0;
            } else if (b == '\r') {
                line++;
                lineLength = 0;
            } else {
                lookAt(b);
            }
            afterReturn = b == '\r';
        }
    }

    private void lookAt(int b) {
        if (b == 0) {
            throw new FileRefusedException(
                    file,
                    "line " + line + " holds a zero byte, which a text file never has",
                    "export it again as CSV (UTF-8)");
        }
        if ((b == 0x81 || b == 0x8D || b == 0x8F || b == 0x90 || b == 0x9D) && lineOfUndefinedByte == 0) {
            lineOfUndefinedByte = line;
            undefinedByte = b;
        }
        if (++lineLength > LONGEST_LINE) {
            throw new FileRefusedException(
                    file,
                    "line " + line + " is longer than 1 MiB",
                    "check that the export ends each row with a line break");
        }
    }
}
