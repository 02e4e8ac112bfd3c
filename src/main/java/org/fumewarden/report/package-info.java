/** Advice as people and programs read it: text, JSON, HTML. */
package org.fumewarden.report;
