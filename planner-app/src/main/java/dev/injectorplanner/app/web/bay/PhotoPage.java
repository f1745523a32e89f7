package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.bayjob.BayJobs;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.photo.Photos;
import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Photographs of what was found, taken at the truck. */
@Controller
class PhotoPage {
    private final BayDesk desk;
    private final Photos photos;
    private final PhotoVisit visits;

    PhotoPage(BayDesk desk, Application application) {
        this.desk = desk;
        this.photos = new Photos(application.store());
        this.visits = new PhotoVisit(new BayJobs(application.store()));
    }

    @PostMapping("/bay/{truck}/photos")
    String add(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("truck") String name,
            @RequestParam(name = "photo", required = false) @Nullable MultipartFile photo,
            @RequestParam(name = "formKey", defaultValue = "") String key,
            @RequestParam(name = "cylinder", defaultValue = "") String cylinder,
            @RequestParam(name = "note", defaultValue = "") String note,
            RedirectAttributes next)
            throws IOException {
        TruckInBay at = desk.truck(viewer, name);
        Integer of = cylinder.matches("\\d{1,2}") && at.family().allCylinders().contains(Integer.valueOf(cylinder))
                ? Integer.valueOf(cylinder)
                : null;
        try {
            if (photo != null && photo.getSize() > Photos.MOST_BYTES) {
                throw RefusedEntryException.of(
                        "photo", "the photograph is larger than 12 MB", "take it with a smaller size");
            }
            byte[] file = photo == null ? new byte[0] : photo.getBytes();
            photos.add(
                    new Photos.Taken(key, name, visits.of(at, photos.ofTruck(name)), of, note, file),
                    desk.clock().now(),
                    viewer.name());
        } catch (RefusedEntryException e) {
            next.addFlashAttribute("photoWrong", e.problems().get(0).words());
        }
        return "redirect:" + BayAddresses.bay(name) + "#photos";
    }

    @PostMapping("/bay/{truck}/photos/{id}/remove")
    String remove(
            @ModelAttribute("viewer") Viewer viewer, @PathVariable("truck") String name, @PathVariable("id") long id) {
        desk.truck(viewer, name);
        photos.remove(name, id, desk.clock().now(), viewer.name());
        return "redirect:" + BayAddresses.bay(name) + "#photos";
    }

    /** For whoever may see the truck; a photograph never changes. */
    @GetMapping({"/bay/{truck}/photos/{id}.jpg", "/trucks/{truck}/photos/{id}.jpg"})
    ResponseEntity<byte[]> picture(
            @ModelAttribute("viewer") Viewer viewer, @PathVariable("truck") String name, @PathVariable("id") long id) {
        desk.truck(viewer, name);
        return photos.findPicture(name, id)
                .map(jpeg -> ResponseEntity.ok()
                        .contentType(MediaType.IMAGE_JPEG)
                        .cacheControl(CacheControl.maxAge(1, TimeUnit.DAYS).cachePrivate())
                        .body(jpeg))
                .orElseThrow(BayDesk::notThere);
    }
}
