/** The sheet of advice, part by part: the page that is read, and the annex behind it. */
package org.fumewarden.report.answer;
