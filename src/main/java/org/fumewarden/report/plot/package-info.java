/** Plots as accessible SVG and as text, pure functions of plain numbers. */
package org.fumewarden.report.plot;
