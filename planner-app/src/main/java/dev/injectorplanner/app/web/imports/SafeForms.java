package dev.injectorplanner.app.web.imports;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.http.HttpStatus;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import org.springframework.web.multipart.MultipartHttpServletRequest;
import org.springframework.web.multipart.support.StandardServletMultipartResolver;
import org.springframework.web.server.ResponseStatusException;

/** Forms with files, of which one that cannot be read is the sender's fault, not the program's. */
final class SafeForms extends StandardServletMultipartResolver {
    @Override
    public MultipartHttpServletRequest resolveMultipart(HttpServletRequest request) {
        try {
            return super.resolveMultipart(request);
        } catch (MaxUploadSizeExceededException e) {
            throw e; // has its own answer
        } catch (RuntimeException e) { // of the server as well: names with zeros are among them
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST, "a form that cannot be read", e);
        }
    }
}
