package dev.injectorplanner.app.browser;

/** The windows that people have. */
enum Size {
    DESK(1280, 900),
    PHONE(390, 844);

    private final int width;
    private final int height;

    Size(int width, int height) {
        this.width = width;
        this.height = height;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }
}
