/** The months ahead, played forward from the plans in force. */
@NullMarked
package dev.injectorplanner.app.web.outlook;

import org.jspecify.annotations.NullMarked;
