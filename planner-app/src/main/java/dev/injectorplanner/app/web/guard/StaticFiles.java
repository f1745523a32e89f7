package dev.injectorplanner.app.web.guard;

/** Styles, scripts and pictures of the pages: files of the program, for which nobody asks the store. */
final class StaticFiles {
    private StaticFiles() {}

    static boolean contain(String path) {
        return path.endsWith(".css") || path.endsWith(".js") || path.endsWith(".svg");
    }
}
