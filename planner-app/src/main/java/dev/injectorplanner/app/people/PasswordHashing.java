package dev.injectorplanner.app.people;

/** How passwords become what the store keeps; slow on purpose. */
public interface PasswordHashing {
    /** The hash, with its method and salt in front. */
    String hash(CharSequence password);

    /** Whether a password belongs to a hash. */
    boolean matches(CharSequence password, String hash);

    /** Whether the hash was made by an older, weaker method or setting and should be made again. */
    boolean isOld(String hash);
}
