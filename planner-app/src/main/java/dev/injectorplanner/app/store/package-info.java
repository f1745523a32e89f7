/** The store: the fleet's tables on HSQLDB or PostgreSQL, through Hibernate, its schema by Flyway. */
@NullMarked
package dev.injectorplanner.app.store;

import org.jspecify.annotations.NullMarked;
