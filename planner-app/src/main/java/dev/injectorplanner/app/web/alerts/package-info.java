/** Alerts: what somebody must decide. */
@NullMarked
package dev.injectorplanner.app.web.alerts;

import org.jspecify.annotations.NullMarked;
