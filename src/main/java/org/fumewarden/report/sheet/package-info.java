/** A sheet before it has a form: parts, lines, signs and cells. Text and HTML are written from the same one. */
package org.fumewarden.report.sheet;
