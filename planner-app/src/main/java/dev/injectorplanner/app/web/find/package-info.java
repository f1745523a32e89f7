/** Search of the whole site: trucks, injectors, parts and orders, from every page. */
@NullMarked
package dev.injectorplanner.app.web.find;

import org.jspecify.annotations.NullMarked;
