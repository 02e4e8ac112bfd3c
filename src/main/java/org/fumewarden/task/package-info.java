/** The task file: reading it, checking it, and turning it into facts. */
package org.fumewarden.task;
