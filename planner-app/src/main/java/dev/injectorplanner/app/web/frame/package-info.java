/** What all pages share: their frame, who looks, which day it is, the plans and the fleet they show. */
@NullMarked
package dev.injectorplanner.app.web.frame;

import org.jspecify.annotations.NullMarked;
