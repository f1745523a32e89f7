/** What the pages of the office share: plans of the depots a person sees, figures in words, drawings. */
@NullMarked
package dev.injectorplanner.app.web.office;

import org.jspecify.annotations.NullMarked;
