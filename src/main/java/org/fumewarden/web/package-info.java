/** The local page: a server on the loopback address that answers with the same JSON as the command line. */
package org.fumewarden.web;
