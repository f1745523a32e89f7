/** The API's addresses. */
@NullMarked
package dev.injectorplanner.app.web.api;

import org.jspecify.annotations.NullMarked;
