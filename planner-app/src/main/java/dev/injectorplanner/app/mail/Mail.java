package dev.injectorplanner.app.mail;

import java.util.List;

/**
 * A mail to be sent once.
 *
 * @param key what makes it the same mail: job, depot, due time, recipient; a second one with this key is not queued
 * @param recipient one plain address
 * @param subject one line
 * @param text for readers without HTML
 * @param html the same for the others, a whole page
 * @param attachments files that go along
 */
public record Mail(
        String key, String recipient, String subject, String text, String html, List<Attachment> attachments) {
    private static final int LONGEST_BODY = 1_000_000;

    public Mail {
        key = Addresses.line("key", key, 500);
        recipient = Addresses.plain("recipient", recipient);
        subject = Addresses.line("subject", subject, 300);
        if (text.length() > LONGEST_BODY || html.length() > LONGEST_BODY) {
            throw new IllegalArgumentException(
                    "a mail's text has at most " + LONGEST_BODY + " characters, this one " + html.length());
        }
        attachments = List.copyOf(attachments);
    }
}
