package dev.injectorplanner.app.digest;

import dev.injectorplanner.app.mail.Attachment;
import dev.injectorplanner.app.mail.Letter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** A workbook along with a letter. */
final class Workbooks {
    private Workbooks() {}

    interface Writing {
        void to(OutputStream out) throws IOException;
    }

    /** Attached where it fits; else the letter says where to get it. */
    static Digests.Lettered along(Letter letter, String name, Writing writing, String remark) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            writing.to(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(name + " could not be written", e);
        }
        if (bytes.size() > Attachment.MOST_BYTES) {
            letter.say("The workbook has " + bytes.size() / 1_000_000
                    + " MB, too large for a mail: the sheets command writes it.");
            return new Digests.Lettered(letter, List.of());
        }
        letter.say(remark);
        return new Digests.Lettered(letter, List.of(new Attachment(name, Attachment.WORKBOOK, bytes.toByteArray())));
    }

    static String inFileName(String name) {
        return name.replaceAll("[^\\p{L}\\p{N}_-]+", "-");
    }
}
