package dev.injectorplanner.app.mail;

import jakarta.activation.DataHandler;
import jakarta.mail.MessagingException;
import jakarta.mail.Part;
import jakarta.mail.Session;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMessage.RecipientType;
import jakarta.mail.internet.MimeMultipart;
import jakarta.mail.util.ByteArrayDataSource;
import java.util.Date;

/** A mail as it goes over the wire: text and HTML side by side (RFC 2046, 5.1.4), attachments after them. */
final class MimeForm extends MimeMessage {
    private final String messageId;

    private MimeForm(Session session, String messageId) {
        super(session);
        this.messageId = messageId;
    }

    static MimeMessage of(Session session, String from, Outbox.Claimed claimed) throws MessagingException {
        Mail mail = claimed.mail();
        MimeMessage message = new MimeForm(session, claimed.messageId());
        message.setFrom(new InternetAddress(from, true));
        message.setRecipient(RecipientType.TO, new InternetAddress(mail.recipient(), true));
        message.setSubject(mail.subject(), "UTF-8");
        message.setSentDate(Date.from(claimed.queuedAt()));
        message.setHeader("Auto-Submitted", "auto-generated"); // RFC 3834: no automatic answers, please
        MimeMultipart both = new MimeMultipart("alternative");
        both.addBodyPart(body(mail.text(), "plain"));
        both.addBodyPart(body(mail.html(), "html"));
        if (mail.attachments().isEmpty()) {
            message.setContent(both);
        } else {
            MimeMultipart all = new MimeMultipart("mixed");
            MimeBodyPart first = new MimeBodyPart();
            first.setContent(both);
            all.addBodyPart(first);
            for (Attachment attachment : mail.attachments()) {
                all.addBodyPart(file(attachment));
            }
            message.setContent(all);
        }
        message.saveChanges();
        return message;
    }

    /** The same at every try, so that a receiver recognises a double. */
    @Override
    protected void updateMessageID() throws MessagingException {
        setHeader("Message-ID", messageId);
    }

    private static MimeBodyPart body(String content, String subtype) throws MessagingException {
        MimeBodyPart part = new MimeBodyPart();
        part.setText(content, "UTF-8", subtype);
        return part;
    }

    private static MimeBodyPart file(Attachment attachment) throws MessagingException {
        MimeBodyPart part = new MimeBodyPart();
        part.setDataHandler(new DataHandler(new ByteArrayDataSource(attachment.content(), attachment.mediaType())));
        part.setFileName(attachment.name());
        part.setDisposition(Part.ATTACHMENT);
        return part;
    }
}
