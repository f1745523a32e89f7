package dev.injectorplanner.app.mail;

import org.jspecify.annotations.Nullable;

/**
 * Who gets which mail.
 *
 * @param depot of which depot, or null for every one
 * @param addressee as what
 * @param address where to
 */
public record MailRecipient(@Nullable String depot, Addressee addressee, String address) {
    public MailRecipient {
        address = Addresses.plain("address", address);
    }
}
