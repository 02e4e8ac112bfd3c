/**
 * Register, log, store, due dates, retention.
 *
 * <p>Depends on no other package of this program: duties come in as arguments, days and times too.
 */
package org.fumewarden.upkeep;
