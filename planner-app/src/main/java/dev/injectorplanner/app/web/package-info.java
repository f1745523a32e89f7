/** The pages: Spring Boot around objects that already exist. */
@NullMarked
package dev.injectorplanner.app.web;

import org.jspecify.annotations.NullMarked;
