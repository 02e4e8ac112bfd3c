/** Rule folders: tables, vocabulary, sources, and the hash that names a state of them. */
package org.fumewarden.codes;
