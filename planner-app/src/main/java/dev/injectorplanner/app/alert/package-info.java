/** Alerts: what somebody must decide, told once and kept until it is dealt with. */
@NullMarked
package dev.injectorplanner.app.alert;

import org.jspecify.annotations.NullMarked;
