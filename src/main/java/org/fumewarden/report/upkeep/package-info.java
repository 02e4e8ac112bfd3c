/** Sheets of the register and the log: what is owed, examination records, before-use card, written programme, calendar. */
package org.fumewarden.report.upkeep;
