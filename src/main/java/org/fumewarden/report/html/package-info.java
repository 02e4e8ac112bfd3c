/** Building blocks of the HTML sheet: words of a language, and markup that cannot be broken by text. */
package org.fumewarden.report.html;
