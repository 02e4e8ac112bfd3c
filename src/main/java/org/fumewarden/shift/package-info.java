/** One shift with the unit in use: its gas filters, its dust, its air flow and its battery, from a task file and the shipped figures. */
package org.fumewarden.shift;
