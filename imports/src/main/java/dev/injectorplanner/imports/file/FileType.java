package dev.injectorplanner.imports.file;

import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/** What a file is by its first bytes. */
enum FileType {
    TEXT,
    WORKBOOK,
    OLD_WORKBOOK,
    JSON,
    XML;

    private static final int LOOKED_AT = 512;
    private static final String SAVE_AS_CSV = "save the table as CSV (UTF-8) or XLSX and load that";

    /** @throws FileRefusedException if the file is not there or is plainly something else */
    static FileType of(Path file) {
        byte[] head = head(file);
        if (head.length == 0) {
            throw new FileRefusedException(file, "is empty", "export it again");
        }
        if (startsWith(head, 0x50, 0x4B, 0x03, 0x04)) {
            return WORKBOOK;
        }
        if (startsWith(head, 0x50, 0x4B, 0x05, 0x06) || startsWith(head, 0x50, 0x4B, 0x07, 0x08)) {
            throw new FileRefusedException(file, "is an empty or split ZIP file, not a workbook", SAVE_AS_CSV);
        }
        if (startsWith(head, 0xD0, 0xCF, 0x11, 0xE0)) {
            refuseProtected(file);
            return OLD_WORKBOOK;
        }
        if (isXml(head)) {
            return XML;
        }
        if (isJson(head)) {
            return JSON;
        }
        refuseOthers(file, head);
        return TEXT;
    }

    private static byte[] head(Path file) {
        if (!Files.exists(file)) {
            throw new FileRefusedException(file, "is not there", "check the name and the folder");
        }
        if (Files.isDirectory(file)) {
            throw new FileRefusedException(file, "is a folder", "name the files in it");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(LOOKED_AT);
        } catch (IOException e) {
            throw new FileRefusedException(file, "cannot be read", "check that you have permission to read it", e);
        }
    }

    private static void refuseOthers(Path file, byte[] head) {
        if (startsWith(head, 0xFF, 0xFE) || startsWith(head, 0xFE, 0xFF) || looksLikeUtf16(head)) {
            throw new FileRefusedException(file, "is written in UTF-16", "save it as UTF-8");
        }
        String what = "";
        if (startsWith(head, '%', 'P', 'D', 'F')) {
            what = "a PDF";
        } else if (startsWith(head, 0x89, 'P', 'N', 'G')
                || startsWith(head, 0xFF, 0xD8, 0xFF)
                || startsWith(head, 'G', 'I', 'F', '8')) {
            what = "a picture";
        } else if (startsWith(head, 0x1F, 0x8B)) {
            what = "a compressed file";
        } else if (startsWith(head, '{', '\\', 'r', 't', 'f')) {
            what = "a text document (RTF)";
        } else if (isMarkup(head)) {
            what = "a web page or XML";
        }
        if (!what.isEmpty()) {
            throw new FileRefusedException(file, "is " + what + ", not a table", SAVE_AS_CSV);
        }
    }

    private static boolean startsWith(byte[] head, int... bytes) {
        if (head.length < bytes.length) {
            return false;
        }
        for (int i = 0; i < bytes.length; i++) {
            if ((head[i] & 0xFF) != bytes[i]) {
                return false;
            }
        }
        return true;
    }

    /** Plain text in UTF-16 without its mark: every other byte of the first few is zero. */
    private static boolean looksLikeUtf16(byte[] head) {
        int even = 0;
        int odd = 0;
        int looked = Math.min(head.length, 32) / 2 * 2;
        for (int i = 0; i < looked; i += 2) {
            even += head[i] == 0 ? 1 : 0;
            odd += head[i + 1] == 0 ? 1 : 0;
        }
        return looked >= 8 && Math.max(even, odd) == looked / 2 && Math.min(even, odd) == 0;
    }

    private static boolean isMarkup(byte[] head) {
        String text = new String(head, StandardCharsets.ISO_8859_1).strip().toLowerCase(Locale.ROOT);
        return text.startsWith("<html") || text.startsWith("<!doctype");
    }

    private static boolean isXml(byte[] head) {
        String text = text(head);
        return text.startsWith("<?xml") && !text.contains("<html") || text.startsWith("<fleet");
    }

    /** A table may begin with a brace as well; one that names the object of the standard does not. */
    private static boolean isJson(byte[] head) {
        String text = text(head);
        return text.startsWith("{") && text.contains("vehiclestatus");
    }

    private static String text(byte[] head) {
        return new String(head, StandardCharsets.UTF_8)
                .replace("\uFEFF", "")
                .strip()
                .toLowerCase(Locale.ROOT);
    }

    /** An OLE container may be an encrypted workbook of today. */
    private static void refuseProtected(Path file) {
        try (POIFSFileSystem container = new POIFSFileSystem(file.toFile(), true)) {
            if (container.getRoot().hasEntryCaseInsensitive("EncryptedPackage")) {
                throw new FileRefusedException(
                        file, "is protected by a password", "open it, save a copy without the password, load that");
            }
        } catch (IOException e) {
            throw new FileRefusedException(file, "is a damaged workbook of the old .xls kind", SAVE_AS_CSV, e);
        } catch (FileRefusedException e) {
            throw e;
        } catch (RuntimeException e) {
            throw new FileRefusedException(file, "is a damaged workbook of the old .xls kind", SAVE_AS_CSV, e);
        }
    }
}
