/** What mechanics looked at while they searched for the cause of a fault, and the repairs that ended it. */
@NullMarked
package dev.injectorplanner.app.diagnosis;

import org.jspecify.annotations.NullMarked;
