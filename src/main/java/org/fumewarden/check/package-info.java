/** Proves a rule base: lint of rules and tables, expectations of scenarios, coverage of rules. */
package org.fumewarden.check;
