/** People, tokens and the audit trail: the administrator's pages. */
@NullMarked
package dev.injectorplanner.app.web.people;

import org.jspecify.annotations.NullMarked;
