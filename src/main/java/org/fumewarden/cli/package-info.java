/** The command line: reads arguments and files, prints, and chooses the exit code. */
package org.fumewarden.cli;
