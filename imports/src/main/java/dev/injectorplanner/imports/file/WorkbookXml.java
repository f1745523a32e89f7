package dev.injectorplanner.imports.file;

import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/** Reads the XML parts of a workbook: no document types, no entities from outside, no part larger than allowed. */
final class WorkbookXml {
    private static final String NO_DOCTYPE = "http://apache.org/xml/features/disallow-doctype-decl";

    private final Path file;
    private final long mostBytes;

    WorkbookXml(Path file, long mostBytes) {
        this.file = file;
        this.mostBytes = mostBytes;
    }

    /** Opens a part. */
    interface Part {
        InputStream open() throws Exception;
    }

    /**
     * @param what the part as a person would call it
     * @throws FileRefusedException if it is damaged, too large or not safe
     */
    void read(String what, Part part, DefaultHandler handler) {
        try (InputStream in = part.open()) {
            if (in == null) {
                return;
            }
            XMLReader reader = reader();
            reader.setContentHandler(handler);
            reader.setErrorHandler(handler);
            reader.setEntityResolver(handler);
            reader.parse(new InputSource(new LimitedStream(in, mostBytes)));
        } catch (FileRefusedException | HandOverFailed e) {
            throw e;
        } catch (SAXException e) {
            throw badXml(what, e);
        } catch (IOException e) {
            throw badPacking(what, e);
        } catch (Exception e) {
            throw damaged(what, e);
        }
    }

    private static XMLReader reader() throws ParserConfigurationException, SAXException {
        SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
        factory.setNamespaceAware(true);
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setFeature(NO_DOCTYPE, true);
        return factory.newSAXParser().getXMLReader();
    }

    private FileRefusedException badXml(String what, SAXException e) {
        if (e.getException() instanceof FileRefusedException refused) {
            return refused;
        }
        if (String.valueOf(e.getMessage()).contains("DOCTYPE")) {
            return new FileRefusedException(
                    file,
                    what + " declares a document type, which no spreadsheet program writes",
                    "open it in a spreadsheet program and save a new copy",
                    e);
        }
        return damaged(what, e);
    }

    private FileRefusedException badPacking(String what, IOException e) {
        if (e instanceof LimitedStream.TooLarge) {
            return new FileRefusedException(
                    file,
                    what + " unpacks to more than " + mostBytes / (1 << 20) + " MiB",
                    "save the table as CSV, or split it",
                    e);
        }
        return isBomb(e) ? bomb(file, e) : damaged(what, e);
    }

    /** The library's own guard against files that unpack to a hundred times their size or more. */
    static boolean isBomb(Throwable e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (String.valueOf(cause.getMessage()).startsWith("Zip bomb")) {
                return true;
            }
        }
        return false;
    }

    static FileRefusedException bomb(Path file, Throwable cause) {
        return new FileRefusedException(
                file,
                "unpacks to more than a hundred times its size, which no real table does",
                "save the table as CSV and load that",
                cause);
    }

    private FileRefusedException damaged(String what, Exception e) {
        return new FileRefusedException(
                file,
                "is a damaged workbook (" + what + " cannot be read)",
                "open it in a spreadsheet program and save a new copy, or copy it again",
                e);
    }
}
