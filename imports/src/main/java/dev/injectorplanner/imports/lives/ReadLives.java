package dev.injectorplanner.imports.lives;

import java.util.List;

/**
 * What a file held.
 *
 * @param remarks things a person should know that stop nothing, such as columns left aside
 */
public record ReadLives<T>(T data, List<String> remarks) {
    public ReadLives {
        remarks = List.copyOf(remarks);
    }
}
