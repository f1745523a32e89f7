package dev.injectorplanner.app.mail;

import java.util.Arrays;

/**
 * A file that goes along with a mail.
 *
 * @param name its file name
 * @param mediaType such as {@value #WORKBOOK}
 * @param content its bytes, at most {@value #MOST_BYTES}
 */
public record Attachment(String name, String mediaType, byte[] content) {
    public static final String WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    /** What fits into the outbox in base64; many servers refuse more than some 10 MB anyway (common practice). */
    public static final int MOST_BYTES = 7_000_000;

    public Attachment {
        name = Addresses.line("name", name, 200);
        mediaType = Addresses.line("mediaType", mediaType, 100);
        if (content.length > MOST_BYTES) {
            throw new IllegalArgumentException(
                    name + " has " + content.length + " bytes, the maximum is " + MOST_BYTES);
        }
        content = content.clone();
    }

    @Override
    public byte[] content() {
        return content.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Attachment that
                && name.equals(that.name)
                && mediaType.equals(that.mediaType)
                && Arrays.equals(content, that.content);
    }

    @Override
    public int hashCode() {
        return 31 * name.hashCode() + Arrays.hashCode(content);
    }

    @Override
    public String toString() {
        return name + " (" + content.length + " bytes)";
    }
}
